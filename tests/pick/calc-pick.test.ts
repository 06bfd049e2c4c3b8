// `calc pick` at its limits, and what it refuses. Capacities are invented; statics, angles and the rules of charts
// are those named in core/pick.
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { calcPick } from '../../core/procedures/calc-pick.ts';

type Input = z.input<typeof calcPick.input>;
type Output = z.output<typeof calcPick.output>;

const base: Input = { weightKg: 1000, hooks: { capacityKg: 600, minimum: 2 }, rigging: { angleDeg: 90 } };

async function pick(changes: Partial<Input>): Promise<Output> {
  const answered = await calcPick.run(calcPick.input.parse({ ...base, ...changes }));
  if (!answered.ok) throw new Error(answered.error.message);
  return calcPick.output.parse(answered.value);
}
async function refused(changes: Partial<Input>): Promise<readonly [string, string | undefined]> {
  const answered = await calcPick.run(calcPick.input.parse({ ...base, ...changes }));
  if (answered.ok) throw new Error('was not refused');
  return [answered.error.code, answered.error.field];
}
const stops = ({ findings }: Output): readonly string[] =>
  findings.filter((one) => one.severity === 'stop').map((one) => one.rule);
const hooks = (more: Partial<Input['hooks']>): Input['hooks'] => ({ ...base.hooks, ...more });

describe('how many hooks', () => {
  test('at 30 degrees two hooks of 500 kg lift 500 kg exactly, and not a gram more', async () => {
    const at30 = { hooks: hooks({ capacityKg: 500 }), rigging: { angleDeg: 30 } };
    const exact = await pick({ ...at30, weightKg: 500 });
    expect([exact.hooksRequired, exact.hookUtilisation, stops(exact)]).toEqual([2, 1, []]);
    const over = await pick({ ...at30, weightKg: 500.001 });
    expect([over.hooksRequired, stops(over)]).toEqual([3, ['hooks.equalised', 'hooks.load', 'hooks.load']]);
  });

  test('an allowance of a tenth on 1000 kg is 1100 kg exactly, though a tenth is no binary fraction', async () => {
    const exact = await pick({ allowance: 0.1, hooks: hooks({ capacityKg: 550 }) });
    expect([exact.hooksRequired, stops(exact)]).toEqual([2, []]);
    expect((await pick({ allowance: 0.1, hooks: hooks({ capacityKg: 549.999 }) })).hooksRequired).toBe(3);
  });

  test('whole grams, halves up: 1000.0004 kg are 1000 kg, 1000.0005 kg are a gram more', async () => {
    const on500 = { hooks: hooks({ capacityKg: 500, ratedFor: 'gang-weight' }) } as const;
    expect((await pick({ ...on500, weightKg: 1000.0004 })).hooksRequired).toBe(2);
    expect((await pick({ ...on500, weightKg: 1000.0005 })).hooksRequired).toBe(3);
  });

  test('from legs of 5 m over 6 m the sine is 4/5 exactly: two hooks of 500 kg lift 800 kg', async () => {
    const legs = {
      hooks: hooks({ capacityKg: 500, positionsMm: [0, 6000] }),
      rigging: { legLengthMm: 5000 },
    };
    const exact = await pick({ ...legs, weightKg: 800 });
    expect([exact.hooksRequired, exact.headroomMm, stops(exact)]).toEqual([2, 4000, []]);
    const over = await pick({ ...legs, weightKg: 800.001 });
    expect(stops(over)).toEqual(['hooks.equalised', 'hooks.count', 'hooks.load', 'hooks.load']);
  });

  test('three legs count where the load is equalised, and stand evenly', async () => {
    const found = await pick({ weightKg: 1500, equalised: true });
    expect([found.hooksRequired, found.loadPerHookKg, stops(found)]).toEqual([3, [500, 500, 500], []]);
    expect((await pick({ weightKg: 1500 })).loadPerHookKg).toEqual([750, 750]);
  });
});

describe('where the hooks stand', () => {
  test('1000 kg with the centre at a quarter are 750 and 250 kg, in the order given', async () => {
    const at = { centreOfGravityMm: 1000, hooks: hooks({ capacityKg: 900, positionsMm: [0, 4000] }) };
    expect((await pick(at)).loadPerHookKg).toEqual([750, 250]);
    const turned = { ...at, hooks: hooks({ capacityKg: 900, positionsMm: [4000, 0] }) };
    expect((await pick(turned)).loadPerHookKg).toEqual([250, 750]);
  });

  test('a centre of gravity over a hook is held, one a nanometre outside is a stop', async () => {
    const positions = hooks({ capacityKg: 2000, positionsMm: ['1000 mm', '3000 mm'] });
    expect(stops(await pick({ hooks: positions, centreOfGravityMm: 1000 }))).toEqual([]);
    const outside = await pick({ hooks: positions, centreOfGravityMm: 999.999_999 });
    expect(stops(outside)).toEqual(['hooks.balance']);
    expect(outside.loadPerHookKg[1]).toBeLessThan(0);
  });

  test('of three hooks that are not equalised each is answered with half the load', async () => {
    const found = await pick({ hooks: hooks({ positionsMm: [0, 1000, 2000] }) });
    expect(found.loadPerHookKg).toEqual([500, 500, 500]);
    expect(stops(found)).toEqual([]);
  });

  test('one hook where two are wanted is a stop', async () => {
    expect(stops(await pick({ hooks: hooks({ capacityKg: 2000, positionsMm: [0] }) }))).toEqual([
      'hooks.count',
    ]);
  });
});

describe('the sling', () => {
  test.each([
    [30, []],
    [29.9999, ['sling.angle']],
    [90, []],
    [90.0001, ['sling.angle']],
  ] as const)('at %d degrees', async (angleDeg, expected) => {
    expect(stops(await pick({ hooks: hooks({ capacityKg: 9000 }), rigging: { angleDeg } }))).toEqual(
      expected,
    );
  });

  test('straight up nothing pulls sideways; at 45 degrees half the load does', async () => {
    expect((await pick({})).horizontalKn).toBe(0);
    expect((await pick({ rigging: { angleDeg: 45 } })).horizontalKn).toBeCloseTo(0.5 * 9.80665, 12);
  });
});

const row = (radiusM: number, capacityKg: number) => ({ radiusM, capacityKg });
const onChart = (...rows: ReturnType<typeof row>[]) => ({ crane: { chart: rows, radiiM: [10] } });
const chart = [row(10, 3000), row(20, 1500), row(30, 1100)];
const used = async (radiiM: number[]): Promise<number | undefined> =>
  (await pick({ crane: { chart, radiiM } })).craneUtilisation;

describe('the crane', () => {
  test('between two radii the smaller value counts, and the worst radius governs', async () => {
    expect(await used([10])).toBeCloseTo(1 / 3, 12);
    expect(await used([10.001])).toBeCloseTo(2 / 3, 12);
    expect(await used([20, 10])).toBeCloseTo(2 / 3, 12);
    expect(await used([25, 10])).toBeCloseTo(10 / 11, 12);
  });

  test('gear and deductions hang on the crane and not on the hooks', async () => {
    const found = await pick({ gearKg: 60, crane: { chart, radiiM: [30], deductKg: 40 } });
    expect([found.craneUtilisation, stops(found), found.loadPerHookKg]).toEqual([1, [], [500, 500]]);
    const over = await pick({ gearKg: 60.001, crane: { chart, radiiM: [30], deductKg: 40 } });
    expect(stops(over)).toEqual(['crane.capacity']);
  });

  test('outside the chart, under and over, is a stop that names the place, and no part of it is answered', async () => {
    for (const radius of [9.999, 30.001]) {
      const found = await pick({ crane: { chart, radiiM: [20, radius] } });
      expect(stops(found)).toEqual(['crane.chart']);
      expect(found.craneUtilisation).toBeUndefined();
      expect(found.findings.find((one) => one.rule === 'crane.chart')?.where).toBe('radiiM[1]');
    }
  });

  test('falling radii and equal ones are refused at their row; a value that rises is a caution', async () => {
    expect(await refused(onChart(row(10, 9), row(9, 8)))).toEqual(['chart-radii', 'crane.chart[1].radiusM']);
    expect(await refused(onChart(row(10, 9), row(10, 8)))).toEqual(['chart-radii', 'crane.chart[1].radiusM']);
    const rising = await pick(onChart(row(10, 2000), row(20, 2001)));
    expect(rising.findings.find((one) => one.rule === 'crane.chart')?.severity).toBe('caution');
  });
});

const wind = async (windMps?: number, windLimitMps?: number) =>
  (
    await pick({
      ...(windMps !== undefined && { windMps }),
      ...(windLimitMps !== undefined && { windLimitMps }),
    })
  ).findings.map(({ severity, message }) => [severity, message] as const);

describe('wind', () => {
  test('at the limit it goes on, over it it stops, without one somebody is missing', async () => {
    expect(await wind(9, 9)).toEqual([]);
    expect((await wind(9.01, 9)).map(([severity]) => severity)).toEqual(['stop']);
    expect((await wind())[0]?.[1]).toContain("the crane maker's is missing");
  });
});

test.each<readonly [string, Partial<Input>, string, string]>([
  ['a weight of zero', { weightKg: 0 }, 'weight-zero', 'weightKg'],
  ['a weight under half a gram', { weightKg: 0.0004 }, 'weight-zero', 'weightKg'],
  ['a negative weight', { weightKg: -1 }, 'weight-negative', 'weightKg'],
  ['a hook of no capacity', { hooks: hooks({ capacityKg: 0 }) }, 'weight-zero', 'hooks.capacityKg'],
  [
    'two hooks in one place',
    { hooks: hooks({ positionsMm: [5, '5 mm'] }) },
    'hooks-same-place',
    'hooks.positionsMm[1]',
  ],
  [
    'legs that just do not reach',
    { hooks: hooks({ positionsMm: [0, 2000] }), rigging: { legLengthMm: 1000 } },
    'legs-too-short',
    'rigging.legLengthMm',
  ],
  ['legs without places', { rigging: { legLengthMm: 1000 } }, 'legs-need-two', 'hooks.positionsMm'],
  ['legs and an angle', { rigging: { legLengthMm: 1000, angleDeg: 60 } }, 'angle-or-legs', 'rigging'],
  ['no rigging', { rigging: {} }, 'angle-or-legs', 'rigging'],
  ['a sling that lies level', { rigging: { angleDeg: 0 } }, 'sling-angle', 'rigging.angleDeg'],
  [
    'a chart that carries nothing',
    { crane: { chart: [{ radiusM: 1, capacityKg: 0 }], radiiM: [1] } },
    'weight-zero',
    'crane.chart[0].capacityKg',
  ],
  [
    'hooks without number',
    { weightKg: 1e9, equalised: true, hooks: hooks({ capacityKg: 0.001 }) },
    'hooks-too-many',
    'hooks.capacityKg',
  ],
])('%s is refused', async (_what, changes, code, field) => {
  expect(await refused(changes)).toEqual([code, field]);
});

const parses = (input: unknown): boolean => calcPick.input.safeParse(input).success;

test('what is no number, and a key that is not known, are refused at the door', () => {
  expect(parses(base)).toBe(true);
  expect(parses({ ...base, rigging: { angleDeg: Number.NaN } })).toBe(false);
  expect(parses({ ...base, weightKg: Number.POSITIVE_INFINITY })).toBe(false);
  expect(parses({ ...base, wind: 3 })).toBe(false);
});
