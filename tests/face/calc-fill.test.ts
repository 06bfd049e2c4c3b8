// `calc fill` as a script asks it: what comes out for a face that can be followed by hand, and what is refused.
import { describe, expect, test } from 'vitest';
import { calculateOne } from '../../core/cli/calculate.ts';
import { calcFill } from '../../core/procedures/calc-fill.ts';
import { calcTakeoff } from '../../core/procedures/calc-takeoff.ts';

const panels = [
  { code: 'A36', width: '36 in', height: '9 ft', weightKg: 90 },
  { code: 'B24', width: '24 in', height: '9 ft', weightKg: 60 },
  { code: 'C18', width: '18 in', height: '9 ft', weightKg: 50 },
  { code: 'D36', width: '36 in', height: '4 ft', weightKg: 40 },
  { code: 'E24', width: '24 in', height: '4 ft', weightKg: 30 },
];
const components = [{ code: 'FL', kind: 'filler-lock', weightKg: 2 }];
const fillerLocks = { component: 'FL', maximumWidth: '4 in', bands: [{ upTo: '9 ft', count: 3 }] };
const system = { panels, components, rules: { fillerLocks } };
const nineFeet = { length: '10 ft', height: '9 ft' };

interface Answered {
  readonly proposals: readonly {
    readonly design: { readonly panels: readonly { panel: string; x: number; y: number }[] };
    readonly fillerMm: number;
    readonly score: readonly number[];
    readonly short: Record<string, number>;
  }[];
  readonly proven: boolean;
  readonly findings: readonly { rule: string; severity: string; message: string; source?: string }[];
}

async function asked(input: Record<string, unknown>): Promise<Answered> {
  const outcome = await calculateOne(calcFill, JSON.stringify({ system, best: 3, ...input }));
  expect(outcome).toMatchObject({ exitCode: 0 });
  return outcome.document as Answered;
}

describe('one row', () => {
  test('10 ft of 36, 24 and 18 in: first the fewest panels without a filler, from the left in catalogue order', async () => {
    const { proposals, proven, findings } = await asked({ face: nineFeet, maximumFiller: 0 });
    // 120 in is 36+36+24+24, then 36+24+24+18+18, then five of 24 (five panels both: more of A36 first)
    expect(proposals.map(({ score }) => score)).toEqual([
      [0, 0, 4],
      [0, 0, 5],
      [0, 0, 5],
    ]);
    expect(proposals.map(({ design }) => design.panels.map(({ panel }) => panel).join(' '))).toEqual([
      'A36 A36 B24 B24',
      'A36 B24 B24 C18 C18',
      'B24 B24 B24 B24 B24',
    ]);
    expect(proposals[0]?.design).toEqual({
      panels: [
        { panel: 'A36', x: 0, y: 0, onSide: false },
        { panel: 'A36', x: 914.4, y: 0, onSide: false },
        { panel: 'B24', x: 1828.8, y: 0, onSide: false },
        { panel: 'B24', x: 2438.4, y: 0, onSide: false },
      ],
      fillers: [],
    });
    expect({ proven, findings }).toEqual({ proven: true, findings: [] });
  });

  test('fewer panels beyond the stock come before less filler; what is missing from the stock has none', async () => {
    const input = { face: { length: '111 in', height: '9 ft' }, maximumFiller: '4 in', best: 2 };
    // 108 in of three A36 leaves 3 in; with the stock, two A36 and two C18 leave the same
    const free = await asked(input);
    expect(free.proposals[0]).toMatchObject({ score: [0, 76.2, 3], short: {} });
    const stocked = await asked({ ...input, stock: { A36: 2, C18: 2 } });
    expect(stocked.proposals[0]).toMatchObject({ score: [0, 76.2, 4], fillerMm: 76.2, short: {} });
    expect(stocked.proposals[1]).toMatchObject({ score: [1, 76.2, 3], short: { A36: 1 } });
  });

  test('the filler is the rest of the length at the right end, and the take-off reads the design as it is', async () => {
    const input = { face: { length: '111 in', height: '9 ft' }, maximumFiller: '4 in', best: 1 };
    const { proposals } = await asked(input);
    expect(proposals[0]?.design).toMatchObject({
      fillers: [{ x: 2743.2, y: 0, width: 76.2, height: 2743.2 }],
    });
    const takeoff = JSON.stringify({ system, design: proposals[0]?.design });
    const outcome = await calculateOne(calcTakeoff, takeoff);
    expect(outcome).toMatchObject({ exitCode: 0, document: { widthMm: 2819.4, heightMm: 2743.2 } });
  });

  test('a filler of exactly the maximum is allowed, one nanometre less is not', async () => {
    const face = { length: '111 in', height: '9 ft' };
    expect((await asked({ face, maximumFiller: '3 in' })).proposals[0]?.fillerMm).toBe(76.2);
    // 108 in is the greatest that they make, 102 in the next
    expect((await asked({ face, maximumFiller: 76.199_999 })).proposals).toEqual([]);
  });

  test('a filler wider than the locks span is a stop that names the proposals, with the source of the number', async () => {
    const sources = { 'fillerLocks.maximumWidth': 'sheet 7' };
    const rules = { fillerLocks, sources };
    const input = { system: { panels, components, rules }, maximumFiller: '6 in' };
    const { findings } = await asked({ ...input, face: { length: '113 in', height: '9 ft' }, best: 1 });
    expect(findings).toEqual([
      {
        rule: 'fillerLocks.maximumWidth',
        severity: 'stop',
        message: expect.stringContaining('Proposal 1 has a filler of up to 5" (127 mm); 4" (101.6 mm)'),
        where: 'right end of the face',
        source: 'sheet 7',
      },
    ]);
    const within = await asked({ ...input, face: { length: '112 in', height: '9 ft' }, best: 1 });
    expect(within.findings).toEqual([]);
  });

  test('a filler in a system without such locks is a note', async () => {
    const face = { length: '109 in', height: '9 ft' };
    const { findings } = await asked({ system: { panels }, face, maximumFiller: '6 in', best: 1 });
    expect(findings).toMatchObject([{ rule: 'fillerLocks', severity: 'note' }]);
  });
});

describe('no way to fill it', () => {
  test('an empty list, proven, with the nearest lengths and the least filler that would do', async () => {
    const { proposals, proven, findings } = await asked({
      face: { length: '101 in', height: '9 ft' },
      maximumFiller: '2 in',
    });
    expect({ proposals, proven }).toEqual({ proposals: [], proven: true });
    expect(findings).toMatchObject([{ rule: 'fill.no-way', severity: 'stop' }]);
    // multiples of 6 in from 36 on can be made: 96 below, 102 above
    expect(findings[0]?.message).toContain(`8'-0" (2438.4 mm) and 8'-6" (2590.8 mm)`);
    expect(findings[0]?.message).toContain('least filler that would do is 5"');
  });

  test('a height that no panel has names the nearest that there is', async () => {
    const { proposals, findings } = await asked({
      face: { length: '10 ft', height: '8 ft' },
      maximumFiller: 0,
    });
    expect(proposals).toEqual([]);
    expect(findings[0]?.message).toContain(`No panel is 8'-0" (2438.4 mm) high`);
    expect(findings[0]?.message).toContain(`9'-0" (2743.2 mm)`);
  });

  test('one row of a face that nothing fills leaves the whole face empty, and is the one named', async () => {
    const { proposals, findings } = await asked({
      face: { length: '90 in', height: '13 ft' },
      rows: ['9 ft', '4 ft'],
      maximumFiller: 0,
    });
    expect(proposals).toEqual([]);
    expect(findings).toMatchObject([{ where: 'row 2 from the bottom' }]);
  });
});

describe('rows', () => {
  test('of different heights are filled by themselves, one above the other, and their fillers add up', async () => {
    const face = { length: '109 in', height: '13 ft' };
    const { proposals } = await asked({ face, rows: ['9 ft', '4 ft'], maximumFiller: '1 in', best: 1 });
    expect(proposals[0]?.score).toEqual([0, 50.8, 6]);
    expect(proposals[0]?.design.panels.map(({ panel, y }) => `${panel} ${y}`)).toEqual([
      'A36 0',
      'A36 0',
      'A36 0',
      'D36 2743.2',
      'D36 2743.2',
      'D36 2743.2',
    ]);
  });

  test('of one height share the stock: what one takes, the other has not', async () => {
    const face = { length: '6 ft', height: '18 ft' };
    const input = { face, rows: ['9 ft', '9 ft'], maximumFiller: 0, best: 1 };
    const shared = await asked({ ...input, stock: { A36: 3, B24: 3, C18: 4 } });
    // 72 in twice: 36+36 and 24+24+24 use no panel beyond the stock
    expect(shared.proposals[0]).toMatchObject({ score: [0, 0, 5], short: {} });
    const fewer = await asked({ ...input, stock: { A36: 3, B24: 2 } });
    expect(fewer.proposals[0]).toMatchObject({ score: [1, 0, 4], short: { A36: 1 } });
  });
});

describe('what cannot be asked is refused with its place', () => {
  const ten = { face: nineFeet, maximumFiller: 0 };
  const refusals: readonly (readonly [what: string, input: Record<string, unknown>, code: string, field: string])[] = [
    ['a length of zero', { ...ten, face: { length: 0, height: '9 ft' } }, 'length-not-positive', 'face.length'],
    ['a length without a unit', { ...ten, face: { length: '10', height: '9 ft' } }, 'length-without-unit', 'face.length'],
    ['a negative height', { ...ten, face: { length: 100, height: -5 } }, 'length-not-positive', 'face.height'],
    ['a negative filler', { ...ten, maximumFiller: -1 }, 'length-negative', 'maximumFiller'],
    ['no filler', { face: nineFeet }, 'bad-input', 'maximumFiller'],
    ['rows that do not add up', { ...ten, rows: ['9 ft', '1 in'] }, 'rows-not-face', 'rows'],
    ['a row of zero', { ...ten, rows: ['9 ft', 0] }, 'length-not-positive', 'rows[1]'],
    ['no rows', { ...ten, rows: [] }, 'bad-input', 'rows'],
    ['stock of an unknown code', { ...ten, stock: { A36: 1, A63: 1 } }, 'stock-unknown', 'stock.A63'],
    ['half a panel in stock', { ...ten, stock: { A36: 0.5 } }, 'bad-input', 'stock.A36'],
    ['none of the best', { ...ten, best: 0 }, 'bad-input', 'best'],
    ['more than 50 of the best', { ...ten, best: 51 }, 'bad-input', 'best'],
    ['a curved face', { ...ten, face: { ...nineFeet, radius: 5000 } }, 'bad-input', 'face'],
    ['a panel without a width', { ...ten, system: { panels: [{ ...panels[0], width: 0 }] } }, 'length-not-positive', 'system.panels[0].width'],
    ['a face of very many panels', { ...ten, face: { length: '9000000 m', height: '9 ft' } }, 'face-too-long', 'face.length'],
  ]; // prettier-ignore
  for (const [what, input, code, field] of refusals)
    test(`${what}: ${code} at ${field}`, async () => {
      const outcome = await calculateOne(calcFill, JSON.stringify({ system, ...input }));
      expect(outcome).toMatchObject({ exitCode: 2, document: { error: { code, field } } });
    });
});
