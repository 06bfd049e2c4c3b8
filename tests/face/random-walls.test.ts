// Both sides of random walls held against geometry alone: every tie hole has its partner opposite, or a finding
// names its place; and the panels of every face stand beside each other without a gap.
import process from 'node:process';
import { expect, test } from 'vitest';
import { fillWall } from '../../core/face/fill-wall.ts';
import type { WallProposal, WallTask } from '../../core/face/wall.ts';
import { Dice } from '../gang/random-designs.ts';
import { inchNm, randomWall, taskOf, wallSystem } from './random-walls.ts';
import { holesInPlan, legsInPlan } from './wall-by-places.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_325);
const widths = [36, 30, 24, 18, 12];

function expectTies({ system, wall }: WallTask, proposal: WallProposal): number {
  const holes = holesInPlan(system, wall, proposal);
  const places = { A: new Set<string>(), B: new Set<string>() };
  for (const { side, at } of holes) places[side].add(at);
  const alone = holes.filter(({ side, opposite }) => !places[side === 'A' ? 'B' : 'A'].has(opposite));
  const told = proposal.findings.filter(({ rule }) => rule.startsWith('ties-'));
  expect(told).toHaveLength(alone.length);
  const stops = alone.filter(({ leg, side, alongNm }) => facesForm(wall, leg, side, alongNm));
  expect(told.filter(({ severity }) => severity === 'stop')).toHaveLength(stops.length);
  expect(proposal.score[1]).toBe(stops.length);
  for (const { side, leg, alongNm, heightNm } of alone) {
    const place = new RegExp(
      `^side ${side}, leg ${leg + 1}, .*${literally(mm(alongNm))} along, .*${literally(mm(heightNm))} up$`,
      'u',
    );
    expect(told.filter(({ where }) => typeof where === 'string' && place.test(where))).toHaveLength(1);
  }
  return holes.length - alone.length;
}

/** Does the other side's face, with its laps, stand opposite? */
function facesForm(wall: WallTask['wall'], leg: number, side: 'A' | 'B', alongNm: number): boolean {
  const plan = legsInPlan(wall)[leg]!;
  const lap = (end: typeof wall.start): number => (end.kind === 'old-concrete' ? end.lapNm : 0);
  const last = leg === wall.legs.length - 1;
  const [from, to] = side === 'A' ? [plan.bFromNm, plan.bToNm] : [0, plan.lengthNm];
  return alongNm >= from - (leg === 0 ? lap(wall.start) : 0) && alongNm <= to + (last ? lap(wall.end) : 0);
}

function mm(lengthNm: number): string {
  return `(${lengthNm / 1_000_000} mm)`;
}

function literally(words: string): string {
  return words.replaceAll(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);
}

/** Gangs, fillers and corner pieces make up every face, and reach beyond it only as far as is allowed. */
function expectFaces({ wall, system }: WallTask, proposal: WallProposal): void {
  const legNm = 12 * inchNm;
  const last = wall.legs.length - 1;
  for (const [leg, plan] of legsInPlan(wall).entries())
    for (const side of ['A', 'B'] as const) {
      const inner = (turn: number): boolean =>
        wall.turns[turn] !== undefined && (wall.turns[turn] === 'left') === (side === 'B');
      const lap = (end: typeof wall.start): number => (end.kind === 'old-concrete' ? end.lapNm : 0);
      const overhang = (end: typeof wall.start): number => (end.kind === 'free' ? end.overhangNm : 0);
      const [faceFrom, faceTo] = side === 'A' ? [0, plan.lengthNm] : [plan.bFromNm, plan.bToNm];
      const from = faceFrom + (inner(leg - 1) ? legNm : 0) - (leg === 0 ? lap(wall.start) : 0);
      const to = faceTo - (inner(leg) ? legNm : 0) + (leg === last ? lap(wall.end) : 0);
      const gangs = proposal.gangs
        .filter((gang) => gang.side === side && gang.leg === leg && gang.bottomNm === 0)
        .toSorted((one, other) => one.fromNm - other.fromNm);
      let at = Math.min(from, gangs[0]?.fromNm ?? from);
      expect(from - at).toBeLessThanOrEqual(leg === 0 ? overhang(wall.start) : 0);
      for (const gang of gangs) {
        // Between gangs stands nothing, or a closure wider than any filler.
        if (gang.fromNm !== at) expect(gang.fromNm - at).toBeGreaterThan(7 * inchNm);
        at = gang.fromNm + gang.widthNm;
      }
      expect(at - to).toBeLessThanOrEqual(leg === last ? overhang(wall.end) : 0);
      if (at < to) expect(proposal.loose.some(({ purpose }) => purpose === 'closure')).toBe(true);
    }
  for (const { geometry } of proposal.designs) {
    const panels = geometry.panels.reduce((area, { panel }) => {
      const found = system.panels.find(({ code }) => code === panel)!;
      return area + found.widthNm * found.heightNm;
    }, 0);
    const fillers = geometry.fillers.reduce((area, { widthNm, heightNm }) => area + widthNm * heightNm, 0);
    const { widthNm, heightNm } = proposal.designs.find((each) => each.geometry === geometry)!;
    expect(Math.round((panels + fillers) / 1e12)).toBe(Math.round((widthNm * heightNm) / 1e12));
  }
}

test('On 50 random L- and U-shaped walls every tie lines up or is a finding at its place', () => {
  const dice = new Dice(seed);
  let [walls, pairs, corners, alone, clear] = [0, 0, 0, 0, 0];
  while (walls < 50) {
    const legs = 2 + dice.roll(2);
    const heights = dice.chance(50) ? [96, 48] : [96];
    const wall = randomWall(dice, legs);
    if (heights.length === 1 && wall.heightNm > 96 * inchNm) continue;
    const task = taskOf(wallSystem(widths, heights, dice.of([2, 6]), dice.chance(50)), wall);
    const filled = fillWall(task, null);
    if (!filled.ok) {
      expect(filled.error.code, `seed ${seed}`).toBe('leg-too-short');
      continue;
    }
    walls += 1;
    corners += legs - 1;
    expect(filled.value.proposals.length, `seed ${seed}`).toBeGreaterThan(0);
    for (const proposal of filled.value.proposals) {
      pairs += expectTies(task, proposal);
      expectFaces(task, proposal);
      alone += proposal.score[1];
      if (proposal.score[1] === 0) clear += 1;
    }
  }
  expect(corners).toBeGreaterThan(60);
  expect(pairs).toBeGreaterThan(1000);
  expect(alone).toBeGreaterThan(50);
  expect(clear).toBeGreaterThan(5);
});
