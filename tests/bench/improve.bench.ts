// Bettering with proof: how long until a plan is known to be within 1 % of the best, with HiGHS on the plain model beside
// it; and how near larger plans come within a part of the time that they are given.
import { edgesOf } from '../../core/plan/edges.ts';
import { improveReuse } from '../../core/plan/mip/improve-reuse.ts';
import type { PlanSolver } from '../../core/plan/mip/solver.ts';
import { readModel } from '../../core/plan/plan-reuse.ts';
import { planSolver } from '../../core/procedures/plan-solver.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { jobOf, type JobSize } from './jobs.ts';
import { loadHighs, solvePlain } from './relaxation.ts';

const seeds = [1, 2, 3];
const limitSeconds = 60;
const largerSeconds = 40;

export const bench: Bench = { name: 'Bettering a plan', run: lines };

async function* lines(): AsyncGenerator<BenchLine> {
  const solver = await planSolver();
  for (const seed of seeds) {
    const size = { seed, turns: 150, components: 40, weeks: 12 };
    const course = followed(size, limitSeconds, solver);
    const what = `150 turns x 40 components x 12 weeks, seed ${seed}`;
    yield { what: `${what}: within 1 % of the best, after`, value: course.until(1), aim: 'under 15 s' };
    yield { what: `${what}: proven the best, after`, value: course.until(0) };
    yield { what: `${what}: cheaper than the instant plan by`, value: percent(course.saved) };
    if (seed === seeds[0]) yield await yardstick(what, size);
  }
  for (const [turns, weeks] of [
    [300, 12],
    [600, 24],
  ] as const) {
    const course = followed({ seed: 1, turns, components: 60, weeks }, largerSeconds, solver);
    const what = `${turns} turns x 60 components x ${weeks} weeks, seed 1`;
    yield {
      what: `${what}: at once, may be dearer than the best by at most`,
      value: percent(course.firstGap),
    };
    yield {
      what: `${what}: after ${course.seconds.toFixed(0)} s, by at most`,
      value: percent(course.gap),
      aim: 'within 5 % in 300 s',
    };
    yield { what: `${what}: cheaper than the instant plan by`, value: percent(course.saved) };
  }
}

async function yardstick(what: string, size: JobSize): Promise<BenchLine> {
  const read = readModel(jobOf(size));
  if (!read.ok) throw new Error(read.error.message);
  const highs = await loadHighs();
  const plain = solvePlain(highs, read.value, edgesOf(read.value), { gap: 0.01, seconds: limitSeconds });
  const reached = plain.gapPercent === null ? 'no plan' : `gap ${plain.gapPercent.toFixed(2)} %`;
  return {
    what: `${what}: HiGHS alone on the plain model, until 1 % or ${limitSeconds} s`,
    value: `${plain.seconds.toFixed(1)} s, ${reached}`,
  };
}

interface Course {
  readonly firstGap: number;
  readonly gap: number;
  readonly saved: number;
  readonly seconds: number;
  readonly until: (gapPercent: number) => string;
}

function followed(size: JobSize, improveSeconds: number, solver: PlanSolver): Course {
  const started = performance.now();
  const seconds = (): number => (performance.now() - started) / 1000;
  const seen: { readonly at: number; readonly gap: number; readonly total: number }[] = [];
  const found = improveReuse({ ...jobOf(size), improveSeconds }, solver, {
    nowMs: () => performance.now(),
    report: ({ gapPercent, proven, cost }) =>
      seen.push({ at: seconds(), gap: proven ? 0 : gapPercent, total: cost.total }),
  });
  if (!found.ok) throw new Error(found.error.message);
  const { gapPercent, proven, cost } = found.value;
  const last = { at: seconds(), gap: proven ? 0 : gapPercent, total: cost.total };
  const [first = last] = seen;
  return {
    firstGap: first.gap,
    gap: last.gap,
    saved: 100 * (1 - last.total / first.total),
    seconds: last.at,
    until: (least) => {
      const reached = [...seen, last].find(({ gap }) => gap <= least);
      return reached === undefined ? `not in ${last.at.toFixed(0)} s` : `${reached.at.toFixed(1)} s`;
    },
  };
}

function percent(value: number): string {
  return `${value.toFixed(2)} %`;
}
