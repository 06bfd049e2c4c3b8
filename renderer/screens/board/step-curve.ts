// A level over time as a stepped line, and the stretches where one level is over another.

export interface Level {
  readonly from: string;
  readonly quantity: number;
}

export interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
  readonly low: number;
  readonly high: number;
}

interface StepAt {
  readonly ms: number;
  readonly quantity: number;
}

export function stepsOf(levels: readonly Level[]): readonly StepAt[] {
  return levels.map((level) => ({ ms: Date.parse(level.from), quantity: level.quantity }));
}

/** The level at an instant: that of the last step not after it; 0 before the first. */
export function levelAt(steps: readonly StepAt[], ms: number): number {
  let level = 0;
  for (const step of steps) {
    if (step.ms > ms) break;
    level = step.quantity;
  }
  return level;
}

/** A stepped path from one instant to another, in pixels. */
export function stepPath(
  steps: readonly StepAt[],
  fromMs: number,
  toMs: number,
  x: (ms: number) => number,
  y: (quantity: number) => number,
): string {
  let path = `M${x(fromMs)} ${y(levelAt(steps, fromMs))}`;
  for (const step of steps) {
    if (step.ms > fromMs && step.ms < toMs) path += `H${x(step.ms)}V${y(step.quantity)}`;
  }
  return `${path}H${x(toMs)}`;
}

/** Where `high` lies over `low`, cut at every step of either. */
export function stretchesOver(
  high: readonly StepAt[],
  low: readonly StepAt[],
  fromMs: number,
  toMs: number,
): readonly Stretch[] {
  const cuts = [fromMs, toMs, ...high.map((step) => step.ms), ...low.map((step) => step.ms)]
    .filter((ms) => ms >= fromMs && ms <= toMs)
    .sort((one, other) => one - other);
  const found: Stretch[] = [];
  for (const [index, at] of cuts.entries()) {
    const until = cuts[index + 1];
    if (until === undefined || until === at) continue;
    const [top, bottom] = [levelAt(high, at), levelAt(low, at)];
    if (top > bottom) found.push({ fromMs: at, toMs: until, low: bottom, high: top });
  }
  return found;
}

/** The highest of several levels within a stretch of time. */
export function highest(all: readonly (readonly StepAt[])[], fromMs: number, toMs: number): number {
  let most = 0;
  for (const steps of all) {
    most = Math.max(most, levelAt(steps, fromMs));
    for (const step of steps) if (step.ms >= fromMs && step.ms < toMs) most = Math.max(most, step.quantity);
  }
  return most;
}
