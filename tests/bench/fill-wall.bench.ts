// Filling both sides of a wall of 60 ft with 12 panel widths: without end, and from a stock that is short.
import { fillWall } from '../../core/face/fill-wall.ts';
import type { Wall, WallTask } from '../../core/face/wall.ts';
import { wholeSolver } from '../../core/procedures/solve-whole.ts';
import { taskOf, wallSystem } from '../face/random-walls.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { median, referenceMs } from './reference-work.ts';

// each takes seconds
const rounds = 2;
const inchNm = 25_400_000;
const inches = [48, 42, 36, 32, 30, 28, 24, 20, 18, 16, 14, 12];
const system = wallSystem(inches, [96]);
const end = { kind: 'free', overhangNm: 0 } as const;
const next = { kind: 'next-pour' } as const;

function wallOf(lengthIn: number): Wall {
  return {
    legs: [{ lengthNm: lengthIn * inchNm }],
    turns: [],
    closed: false,
    start: next,
    end,
    thicknessNm: 12 * inchNm,
    heightNm: 96 * inchNm,
    freeboardNm: 0,
  };
}

const stock = Object.fromEntries(system.panels.map(({ code }) => [code, 2]));

const walls: readonly (readonly [what: string, task: WallTask, aim?: string])[] = [
  ['60 ft both sides, 12 widths, no stock limit', taskOf(system, wallOf(720)), 'proven, under 2 s'],
  ['60 ft both sides, 12 widths, two of each', taskOf(system, wallOf(720), { stock }), 'proven, under 2 s'],
  ['60 ft and 1 in both sides, 12 widths, two of each', taskOf(system, wallOf(721), { stock }), 'proven, under 2 s'],
]; // prettier-ignore

export const bench: Bench = { name: 'Filling both sides of a wall', run: lines };

async function* lines(): AsyncGenerator<BenchLine> {
  const reference = referenceMs();
  const solve = await wholeSolver();
  yield { what: 'fixed reference computation', value: `${reference.toFixed(0)} ms` };
  for (const [what, task, aim] of walls) {
    const times: number[] = [];
    let proven = false;
    for (let round = 0; round <= rounds; round += 1) {
      const started = performance.now();
      const filled = fillWall(task, solve);
      times.push(performance.now() - started);
      if (!filled.ok || filled.value.proposals.length === 0) throw new Error(`${what}: no proposal.`);
      proven = filled.value.proven;
    }
    if (!proven && aim !== undefined) throw new Error(`${what}: not proven.`);
    const warm = median(times.slice(1));
    yield { what: `${what}: the first`, value: `${(times[0] ?? 0).toFixed(0)} ms` };
    yield {
      what: `${what}: ${proven ? 'proven' : 'not proven'}, median of the next ${rounds}`,
      value: `${warm.toFixed(0)} ms`,
      ...(aim !== undefined && { aim }),
    };
    yield { what: `${what}: over the reference`, value: (warm / reference).toFixed(2) };
  }
}
