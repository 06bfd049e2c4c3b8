// Days next to one another that rest on the same weak figures are one run.
import type { DayBox } from './day-scale.ts';

export interface WeakRun {
  readonly from: string;
  readonly to: string;
  readonly x: number;
  readonly width: number;
  readonly components: readonly string[];
}

export function weakRuns(days: readonly DayBox[]): readonly WeakRun[] {
  const runs: WeakRun[] = [];
  let isNext = false;
  for (const { date, x, width, day } of days) {
    const components = day?.restsOnWeak ?? [];
    const last = runs.at(-1);
    if (components.length > 0) {
      if (isNext && last !== undefined && last.components.join() === components.join())
        runs[runs.length - 1] = { ...last, to: date, width: x + width - last.x };
      else runs.push({ from: date, to: date, x, width, components });
    }
    isNext = components.length > 0;
  }
  return runs;
}
