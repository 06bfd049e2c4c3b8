// `calc pick` on random input against a second implementation that shares no code with it: loads from the two
// equations of equilibrium solved as a matrix, counts by counting up, charts by walking them, doubles throughout.
import { expect, test } from 'vitest';
import type { z } from 'zod';
import { calcPick } from '../../core/procedures/calc-pick.ts';
import { Dice } from '../gang/random-designs.ts';

type Input = z.input<typeof calcPick.input>;
type Output = z.output<typeof calcPick.output>;

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 1713);

interface Expected {
  readonly loads: readonly number[];
  readonly sine: number;
  readonly required: number;
  readonly utilisation: number;
  readonly crane: number | undefined;
  readonly stops: readonly string[];
}

/** a x + b y = e, c x + d y = f, by Cramer's rule. */
function solve(a: number, b: number, e: number, c: number, d: number, f: number): readonly [number, number] {
  const determinant = a * d - b * c;
  return [(e * d - b * f) / determinant, (a * f - e * c) / determinant];
}

function expectedOf(input: Input): Expected {
  const { hooks, rigging, crane, gearKg = 0, allowance = 0, equalised = false } = input;
  const load = input.weightKg * (1 + allowance);
  const at = hooks.positionsMm?.map(Number);
  const centre = Number(input.centreOfGravityMm ?? (at ? (Math.min(...at) + Math.max(...at)) / 2 : 0));
  let sine = Math.sin(((rigging.angleDeg ?? 90) * Math.PI) / 180);
  if (rigging.legLengthMm !== undefined && at) {
    const [half, leg] = [Math.abs((at[1] ?? 0) - (at[0] ?? 0)) / 2, Number(rigging.legLengthMm)];
    sine = Math.sqrt(leg ** 2 - half ** 2) / leg;
  }
  const able = hooks.ratedFor === 'gang-weight' ? hooks.capacityKg : hooks.capacityKg * sine;
  let required = hooks.minimum;
  while (required * able < load) required += 1;
  let loads: readonly number[];
  if (at?.length === 2) loads = solve(1, 1, load, at[0] ?? 0, at[1] ?? 0, load * centre);
  else {
    const count = at?.length ?? (equalised ? required : 2);
    loads = Array.from({ length: count }, () => load / (count > 2 && !equalised ? 2 : count));
  }
  const stops = new Set<string>();
  if (required > 2 && !equalised) stops.add('hooks.equalised');
  if (at && at.length < required) stops.add('hooks.count');
  if (at && (centre < Math.min(...at) || centre > Math.max(...at))) stops.add('hooks.balance');
  if (sine < 0.5) stops.add('sling.angle');
  const utilisation = Math.max(...loads) / able;
  if (utilisation > 1) stops.add('hooks.load');
  const windLimit = input.windLimitMps;
  if (windLimit !== undefined && (input.windMps ?? 0) > windLimit) stops.add('wind.limit');
  let share: number | undefined;
  if (crane) {
    const hanging = load + gearKg + (crane.deductKg ?? 0);
    const carried = crane.radiiM.map((radius) => {
      const exact = crane.chart.find((row) => row.radiusM === radius);
      if (exact) return exact.capacityKg;
      const under = crane.chart.filter((row) => row.radiusM < radius);
      const over = crane.chart.filter((row) => row.radiusM > radius);
      if (under.length === 0 || over.length === 0) return undefined;
      return Math.min(under.at(-1)?.capacityKg ?? 0, over[0]?.capacityKg ?? 0);
    });
    const shares = carried.map((capacity) => (capacity === undefined ? undefined : hanging / capacity));
    if (shares.includes(undefined)) stops.add('crane.chart');
    else share = Math.max(...shares.map((one) => one ?? 0));
    if (shares.some((one) => one !== undefined && one > 1)) stops.add('crane.capacity');
  }
  return { loads, sine, required, utilisation, crane: share, stops: [...stops].sort() };
}

function randomPick(dice: Dice): Input {
  const known = dice.roll(4);
  const places = new Set<number>();
  while (places.size < (known === 3 ? 3 + dice.roll(2) : 2)) places.add(dice.roll(120) * 100);
  const positionsMm = known === 0 ? undefined : [...places];
  const [one = 0, other = 0] = positionsMm ?? [];
  const byLegs = positionsMm?.length === 2 && dice.chance(50);
  let radiusM = 5 + dice.roll(10);
  const chart = Array.from({ length: 1 + dice.roll(5) }, () => {
    radiusM += 1 + dice.roll(8);
    return { radiusM, capacityKg: 300 + dice.roll(6000) };
  });
  return {
    weightKg: 200 + dice.roll(3000) + dice.of([0, 0.5, 0.125]),
    ...(dice.chance(60) && { centreOfGravityMm: dice.roll(12_000) }),
    hooks: {
      capacityKg: 300 + dice.roll(1500),
      ...(dice.chance(50) && { ratedFor: dice.of(['sling-tension', 'gang-weight'] as const) }),
      minimum: dice.roll(4),
      ...(positionsMm && { positionsMm }),
    },
    rigging: byLegs
      ? { legLengthMm: Math.abs(other - one) / 2 + 50 + dice.roll(4000) }
      : { angleDeg: dice.of([20, 37.5, 52, 75, 15 + dice.roll(75)]) + 0.25 },
    equalised: dice.chance(40),
    gearKg: dice.roll(200),
    allowance: dice.of([0, 0.05, 0.13]),
    ...(dice.chance(70) && {
      crane: {
        chart,
        radiiM: [dice.of(chart).radiusM, 6 + dice.roll(30)].slice(0, 1 + dice.roll(2)),
        deductKg: dice.roll(100),
      },
    }),
    ...(dice.chance(50) && { windMps: dice.roll(15), windLimitMps: dice.roll(15) }),
  };
}

test('3000 random picks are those of a second implementation', async () => {
  const dice = new Dice(seed);
  const met = new Map<string, number>();
  for (let round = 0; round < 3000; round++) {
    const input = randomPick(dice);
    const answered = await calcPick.run(calcPick.input.parse(input));
    const said = `seed ${seed}, round ${round}: ${JSON.stringify(input)}`;
    if (!answered.ok) throw new Error(`${said}: ${answered.error.message}`);
    const found: Output = calcPick.output.parse(answered.value);
    const expected = expectedOf(input);
    expect(found.hooksRequired, said).toBe(expected.required);
    expect(found.loadPerHookKg.length, said).toBe(expected.loads.length);
    for (const [index, load] of expected.loads.entries()) {
      near(found.loadPerHookKg[index], load, said);
      near(found.slingTensionKn[index], (load * 9.80665) / 1000 / expected.sine, said);
    }
    const sideways = Math.max(...expected.loads) * Math.sqrt(1 - expected.sine ** 2);
    near(found.horizontalKn, (sideways * 9.80665) / 1000 / expected.sine, said);
    near(found.hookUtilisation, expected.utilisation, said);
    near(found.craneUtilisation ?? -1, expected.crane ?? -1, said);
    if (input.rigging.legLengthMm !== undefined)
      near(found.headroomMm, Number(input.rigging.legLengthMm) * expected.sine, said);
    const stops = new Set(found.findings.filter((one) => one.severity === 'stop').map((one) => one.rule));
    expect([...stops].sort(), said).toEqual(expected.stops);
    for (const rule of expected.stops) met.set(rule, (met.get(rule) ?? 0) + 1);
  }
  // every stop there is was met
  expect([...met.keys()].sort()).toEqual([
    'crane.capacity',
    'crane.chart',
    'hooks.balance',
    'hooks.count',
    'hooks.equalised',
    'hooks.load',
    'sling.angle',
    'wind.limit',
  ]);
});

function near(read: number | undefined, wanted: number, said: string): void {
  expect(Math.abs((read ?? Number.NaN) - wanted), said).toBeLessThanOrEqual(
    1e-9 * Math.max(1, Math.abs(wanted)),
  );
}
