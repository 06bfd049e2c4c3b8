// `calc fill` of a wall and of a column as a script asks it: lengths with units in, millimetres out, gangs that
// `calc takeoff` reads, and what is refused with its place.
import { expect, test } from 'vitest';
import { z } from 'zod';
import { calculateOne } from '../../core/cli/calculate.ts';
import { calcFill } from '../../core/procedures/calc-fill.ts';
import { calcTakeoff } from '../../core/procedures/calc-takeoff.ts';
import { bothSidesOutput } from '../../core/procedures/fill-wall-answer.ts';

const panelOf = (code: string, width: number) => ({
  code,
  width: `${width} in`,
  height: '9 ft',
  weightKg: width * 2.5,
  tieHoles: [2, width - 2].flatMap((x) => [`1 ft`, '8 ft'].map((y) => [`${x} in`, y])),
});
const system = {
  panels: [panelOf('A36', 36), panelOf('B24', 24), panelOf('C12', 12)],
  components: [
    { code: 'LK', kind: 'lock', weightKg: 2 },
    { code: 'AL', kind: 'filler-lock', weightKg: 3 },
    { code: 'OC9', kind: 'outside-corner', weightKg: 20, length: '9 ft' },
  ],
  rules: {
    locks: { component: 'LK', bands: [{ upTo: '9 ft', count: 3 }] },
    fillerLocks: { component: 'AL', maximumWidth: '6 in', bands: [{ upTo: '9 ft', count: 3 }] },
  },
};
const wall = { legs: [{ length: '20 ft' }], thickness: '1 ft', height: '8 ft 6 in', freeboard: '6 in' };

async function asked(input: Record<string, unknown>): Promise<z.infer<typeof bothSidesOutput>> {
  const outcome = await calculateOne(calcFill, JSON.stringify({ system, ...input }));
  expect(outcome).toMatchObject({ exitCode: 0 });
  return bothSidesOutput.parse(outcome.document);
}

test('20 ft on both sides: six of 36 in and one of 24 a side, every tie with its partner, in millimetres', async () => {
  const { proposals, proven } = await asked({ wall });
  expect(proven).toBe(true);
  expect(proposals[0]).toMatchObject({
    order: 'first',
    score: { newFaceMm: 12_192, holesAlone: 0, shortage: 0, fillerMm: 0, panelCount: 14 },
    rowsMm: [2743.2],
    short: {},
  });
  const { gangs, designs, alone } = proposals[0]!;
  expect({ gangs, alone }).toEqual({
    gangs: [
      { side: 'A', leg: 0, design: 'G1', fromMm: 0, widthMm: 6096, bottomMm: 0 },
      { side: 'B', leg: 0, design: expect.any(String), fromMm: 0, widthMm: 6096, bottomMm: 0 },
    ],
    alone: [],
  });
  // what it weighs here is what its take-off weighs
  for (const { geometry, weightKg } of designs) {
    const taken = await calculateOne(calcTakeoff, JSON.stringify({ system, design: geometry }));
    expect(taken).toMatchObject({ exitCode: 0, document: { weightKg, widthMm: 6096, heightMm: 2743.2 } });
  }
});

test('A stock is shared by both sides, and by the solver it is proven what is short', async () => {
  const { proposals, proven } = await asked({ wall, stock: { A36: 10, B24: 4, C12: 4 } });
  expect(proven).toBe(true);
  // 480 in on both sides: ten of 36 are 360, the rest are four of 24 and two of 12
  expect(proposals[0]).toMatchObject({ score: { shortage: 0, fillerMm: 0, panelCount: 16 }, short: {} });
  const fewer = await asked({ wall, stock: { A36: 10, B24: 3 } });
  expect(fewer.proven).toBe(true);
  expect(fewer.proposals[0]?.score.shortage).toBe(2);
});

test('A column of 2 by 3 ft is two gangs of one design with its fold', async () => {
  const column = { widthA: '2 ft', widthB: '3 ft', height: '9 ft' };
  const { proposals } = await asked({ column, stock: { A36: 2, B24: 1 } });
  expect(proposals[0]).toMatchObject({
    score: { newFaceMm: 3048, holesAlone: 0, shortage: 1, fillerMm: 0, panelCount: 4 },
    designs: [{ foldMm: 609.6, widthMm: 1524 }],
    gangs: [],
    short: { B24: 1 },
  });
});

const refusals: readonly (readonly [what: string, input: Record<string, unknown>, code: string, field: string])[] = [
  ['a length of zero', { wall: { ...wall, legs: [{ length: 0 }] } }, 'length-not-positive', 'wall.legs[0].length'],
  ['a thickness without a unit', { wall: { ...wall, thickness: '8' } }, 'length-without-unit', 'wall.thickness'],
  ['a wall longer than a kilometre', { wall: { ...wall, legs: [{ length: '1001 m' }] } }, 'length-too-long', 'wall.legs[0].length'],
  ['a wall without a height', { wall: { legs: wall.legs, thickness: '1 ft' } }, 'bad-input', 'wall.height'],
  ['a key that is not known', { wall: { ...wall, tall: 1 } }, 'bad-input', 'wall'],
  ['a negative overhang', { wall: { ...wall, end: { kind: 'free', overhang: -1 } } }, 'length-negative', 'wall.end.overhang'],
  ['a wall and a column', { wall, column: { widthA: 600, widthB: 600, height: '9 ft' } }, 'wall-or-column', 'wall'],
  ['stock of an unknown code', { wall, stock: { A63: 1 } }, 'stock-unknown', 'stock.A63'],
  ['a wall formed on one side', { wall: { ...wall, outOfScope: ['single-sided'] } }, 'ask-the-designer', 'wall.outOfScope'],
  ['a corner of 60 degrees', { wall: { ...wall, legs: [...wall.legs, ...wall.legs], turns: [{ turn: 'left', angleDeg: 60 }] } }, 'ask-the-designer', 'wall.turns'],
  ['neither face, wall nor column', { maximumFiller: 0 }, 'bad-input', 'face'],
  ['a face beside a wall', { face: { length: '10 ft', height: '9 ft' }, wall, maximumFiller: 0 }, 'bad-input', ''],
]; // prettier-ignore
for (const [what, input, code, field] of refusals)
  test(`${what}: ${code} at ${field === '' ? 'the input' : field}`, async () => {
    const outcome = await calculateOne(calcFill, JSON.stringify({ system, ...input }));
    expect(outcome).toMatchObject({ exitCode: 2, document: { error: { code } } });
    expect((outcome.document as { error: { field?: string } }).error.field ?? '').toBe(field);
  });

test('An unknown key of a face is told as before, and alone', async () => {
  const face = { length: '10 ft', height: '9 ft' };
  const { document } = await calculateOne(
    calcFill,
    JSON.stringify({ system, face, maximumFiller: 0, stok: {} }),
  );
  expect(document).toEqual({
    error: { code: 'bad-input', message: 'The input: the key "stok" is unknown.' },
  });
});

test('The printed schema names the three forms', () => {
  expect(z.toJSONSchema(calcFill.input, { io: 'input' })).toMatchObject({
    anyOf: [{ required: expect.arrayContaining(['face']) }, { properties: { wall: {}, column: {} } }],
  });
});

const corner = (canShrink: boolean) => ({
  code: 'IC9',
  kind: 'inside-corner',
  weightKg: 40,
  width: '12 in',
  height: '9 ft',
  tieHoles: [
    ['10 in', '1 ft'],
    ['10 in', '8 ft'],
  ],
  canShrink,
});

test('A closed box of 12 ft asked as text comes off its concrete only with an inside corner that can be drawn in', async () => {
  const leg = { length: '12 ft' };
  const box = {
    ...wall,
    legs: [leg, leg, leg, leg],
    turns: ['left', 'left', 'left', 'left'],
    closed: true,
  };
  const rulesOf = async (canShrink: boolean): Promise<readonly string[]> => {
    const components = [...system.components, corner(canShrink)];
    const { proposals } = await asked({ system: { ...system, components }, wall: box });
    return proposals[0]!.findings.map(({ rule }) => rule);
  };
  expect(await rulesOf(false)).toContain('corners.no-way-to-shrink');
  expect(await rulesOf(true)).not.toContain('corners.no-way-to-shrink');
});
