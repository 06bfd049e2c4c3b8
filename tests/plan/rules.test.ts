// Single rules of `calc plan`, each by a case small enough to work out by hand.
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { planInput, type PlanAnswer, type PlanInput } from '../../core/plan/contract.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { calcPlan } from '../../core/procedures/calc-plan.ts';

/** Two gangs of ten panels, a day apart, that may fly on; labour 100 an hour, panels 7 a day. */
function base(change: Partial<PlanInput> = {}): PlanInput {
  return {
    components: [
      { code: 'P', stock: 10, hirePerDay: 7 },
      { code: 'L', stock: 100, hirePerDay: 1 },
    ],
    designs: [
      { code: 'A', pieces: { P: 10, L: 20 }, assembleH: 8, breakDownH: 4 },
      { code: 'B', pieces: { P: 8, L: 26 }, assembleH: 6, breakDownH: 3 },
      { code: 'C', pieces: { L: 5 }, assembleH: 1, breakDownH: 1 },
    ],
    turns: [
      { id: 'T1', design: 'A', from: '2026-03-02T07:00:00-05:00', to: '2026-03-04T15:00:00-05:00' },
      { id: 'T2', design: 'A', from: '2026-03-05T07:00:00-05:00', to: '2026-03-06T15:00:00-05:00' },
    ],
    turnaround: { flyOnH: 1.5, regangBaseH: 2, regangPerPieceH: { P: 0.5, L: 0.1 } },
    labourPerH: 100,
    ...change,
  };
}

function plan(input: PlanInput): PlanAnswer {
  const made = planReuse(planInput.parse(input), () => 0);
  if (!made.ok) throw new Error(`${made.error.code}: ${made.error.message}`);
  return made.value;
}

function runs(input: PlanInput): string {
  return plan(input)
    .runs.map(({ turns }) => turns.join('>'))
    .join(' ');
}

describe('cost', () => {
  test('one run of two turns costs 8 h + 1.5 h + 4 h = 1,350, and no hire', () => {
    expect(plan(base())).toMatchObject({
      runs: [{ turns: ['T1', 'T2'] }],
      cost: { labour: 1350, hire: 0, total: 1350, unmet: 0 },
      bound: 1350,
      gapPercent: 0,
      proven: true,
      shortfalls: [],
    });
  });

  test('labour is hours x crew: a crew of three costs 4,050', () => {
    expect(plan(base({ crew: 3 })).cost.labour).toBe(4050);
  });

  test('a cost past 9007199254740991, which a number no longer counts singly, is refused', () => {
    const input = base({ labourPerH: 1e12 });
    const [first, ...others] = input.designs;
    const made = planReuse({ ...input, designs: [{ ...first!, assembleH: 10_000 }, ...others] }, () => 0);
    expect(made).toMatchObject({ ok: false, error: { code: 'cost-too-large' } });
  });

  test('a turn built before begins without 8 h of assembly: 550', () => {
    const input = base();
    expect(plan({ ...input, turns: [{ ...input.turns[0]!, built: true }, input.turns[1]!] }).cost.total).toBe(
      550,
    );
  });

  test('cleaning holds pieces but is no labour', () => {
    const input = base();
    expect(plan({ ...input, turnaround: { ...input.turnaround, cleanH: 12 } }).cost.labour).toBe(1350);
  });

  test('two panels short from Monday 23:00 to Wednesday 01:00 are hired for three days: 2 x 3 x 7 = 42', () => {
    const input = base({
      turns: [],
      loose: [
        { id: 'X', pieces: { P: 12 }, from: '2026-03-02T23:00:00-05:00', to: '2026-03-04T01:00:00-05:00' },
      ],
    });
    expect(plan(input).cost).toEqual({ labour: 0, hire: 42, total: 42, unmet: 0 });
    expect(plan(input).shortfalls).toEqual([
      {
        component: 'P',
        from: '2026-03-02T23:00:00-05:00',
        to: '2026-03-04T01:00:00-05:00',
        quantity: 2,
        turns: [],
        loose: ['X'],
      },
    ]);
  });

  test('what ends at midnight is not hired for the day that begins then', () => {
    const loose = [
      { id: 'X', pieces: { P: 12 }, from: '2026-03-02T23:00:00-05:00', to: '2026-03-03T00:00:00-05:00' },
    ];
    expect(plan(base({ turns: [], loose })).cost.hire).toBe(14);
  });

  test('a day runs by the time zone of the shifts: the same stretch in India lies within one day', () => {
    const loose = [
      { id: 'X', pieces: { P: 12 }, from: '2026-03-02T23:00:00-05:00', to: '2026-03-03T01:00:00-05:00' },
    ];
    const shifts = { timeZone: 'Asia/Kolkata', days: [1, 2, 3, 4, 5], start: '07:00', end: '15:30' };
    expect(plan(base({ turns: [], loose })).cost.hire).toBe(28);
    const there = plan(base({ turns: [], loose, shifts }));
    expect(there.cost.hire).toBe(14);
    expect(there.shortfalls[0]).toMatchObject({
      from: '2026-03-03T09:30:00+05:30',
      to: '2026-03-03T11:30:00+05:30',
    });
  });

  test('total and labour are rounded once, half up, and hire is their difference: 0.5 + 0.5 gives 1, labour 1, hire 0', () => {
    const input = base({ turns: [base().turns[0]!], labourPerH: 0.5 });
    const half = plan({
      ...input,
      components: [{ code: 'P', stock: 9, hirePerDay: 0.125 }, input.components[1]!],
      designs: [{ code: 'A', pieces: { P: 10 }, assembleH: 1, breakDownH: 0 }],
      turns: [{ id: 'T1', design: 'A', from: '2026-03-02T07:00:00-05:00', to: '2026-03-05T15:00:00-05:00' }],
    });
    expect(half.cost).toEqual({ labour: 1, hire: 0, total: 1, unmet: 0 });
  });

  test('tenths add up exactly: ten follows of 0.1 h at 10 an hour are 10, not 9', () => {
    const turns = Array.from({ length: 11 }, (_, index) => ({
      id: `T${index}`,
      design: 'A',
      from: `2026-03-${String(10 + index)}T07:00:00-05:00`,
      to: `2026-03-${String(10 + index)}T12:00:00-05:00`,
    }));
    const designs = [{ code: 'A', pieces: { P: 10 }, assembleH: 0, breakDownH: 0 }];
    const input = base({
      turns,
      designs,
      labourPerH: 10,
      turnaround: { flyOnH: 0.1, regangBaseH: 0, regangPerPieceH: 0 },
    });
    const components = [{ code: 'P', stock: 0, hirePerDay: 100 }];
    expect(plan({ ...input, components }).cost.labour % 1).toBe(0);
    // Beginning anew is free, so no follow is worth its tenth of an hour; a dear assembly makes all ten worth it.
    const dear = { ...input, components, designs: [{ ...designs[0]!, assembleH: 1000 }] };
    expect(
      plan({ ...dear, turns: turns.map((turn, index) => (index === 0 ? { ...turn, built: true } : turn)) })
        .cost.labour,
    ).toBe(10);
  });

  test('a stock list is a level from each instant on, and nothing before the first', () => {
    const components = [
      {
        code: 'P',
        stock: [
          { from: '2026-03-04T00:00:00-05:00', quantity: 12 },
          { from: '2026-03-03T00:00:00-05:00', quantity: 4 },
        ],
        hirePerDay: 1,
      },
    ];
    const loose = [
      { id: 'X', pieces: { P: 12 }, from: '2026-03-02T07:00:00-05:00', to: '2026-03-05T07:00:00-05:00' },
    ];
    const made = plan(
      base({
        components,
        designs: [],
        turns: [],
        loose,
        turnaround: { flyOnH: 0, regangBaseH: 0, regangPerPieceH: 0 },
      }),
    );
    expect(made.shortfalls.map(({ quantity }) => quantity)).toEqual([12, 8]);
    expect(made.cost.hire).toBe(20);
  });

  test('what cannot be hired is made least first, whatever it costs: 15 h of flying on rather than ten panels wanting for a day', () => {
    const input = base({
      designs: [{ code: 'A', pieces: { P: 10 }, assembleH: 1, breakDownH: 4 }],
      turnaround: { flyOnH: 15, regangBaseH: 0, regangPerPieceH: 0, cleanH: 12 },
    });
    // Broken down and cleaned until 07:00, assembled from 06:00: for an hour both hold ten panels.
    expect(plan(input)).toMatchObject({
      runs: [{ turns: ['T1'] }, { turns: ['T2'] }],
      cost: { labour: 1000, hire: 70 },
    });
    const never = plan({
      ...input,
      components: [{ code: 'P', stock: 10, hirePerDay: null }, input.components[1]!],
    });
    expect(never).toMatchObject({
      runs: [{ turns: ['T1', 'T2'] }],
      cost: { labour: 2000, hire: 0, unmet: 0 },
    });
  });
});

describe('who may follow', () => {
  test('16 clock hours between strip and set: a fly-on of 16 h fits, one of 16.001 h does not', () => {
    const input = base();
    expect(runs({ ...input, turnaround: { ...input.turnaround, flyOnH: 10 } })).toBe('T1>T2');
    const built = { ...input, designs: [{ ...input.designs[0]!, assembleH: 100, breakDownH: 100 }] };
    expect(runs({ ...built, turnaround: { ...input.turnaround, flyOnH: 16 } })).toBe('T1>T2');
    expect(runs({ ...built, turnaround: { ...input.turnaround, flyOnH: 16.001 } })).toBe('T1 T2');
  });

  test('another design is re-ganged in 2 + 2 x 0.5 + 6 x 0.1 = 3.6 h, and costs 8 + 1.5 + 3.6 + 3 = 16.1 h', () => {
    const input = base();
    const turns = [input.turns[0]!, { ...input.turns[1]!, design: 'B' }];
    expect(plan({ ...input, turns })).toMatchObject({
      runs: [{ turns: ['T1', 'T2'] }],
      cost: { labour: 1610, hire: 0 },
    });
  });

  test('the entry of the table goes one way: A to B takes its 0.5 h, B to A by pieces', () => {
    const input = base();
    const turnaround = { ...input.turnaround, regangH: [{ from: 'A', to: 'B', hours: 0.5 }] };
    const [first, second] = [input.turns[0]!, input.turns[1]!];
    expect(plan({ ...input, turnaround, turns: [first, { ...second, design: 'B' }] }).cost.labour).toBe(1300);
    expect(plan({ ...input, turnaround, turns: [{ ...first, design: 'B' }, second] }).cost.labour).toBe(
      600 + 150 + 360 + 400,
    );
  });

  test('designs that share no piece never follow each other', () => {
    const input = base();
    const designs = [{ ...input.designs[0]!, pieces: { P: 10 } }, input.designs[2]!];
    expect(runs({ ...input, designs, turns: [input.turns[0]!, { ...input.turns[1]!, design: 'C' }] })).toBe(
      'T1 T2',
    );
  });

  test('re-ganging is shift work: 15:00 on Friday to 07:30 on Monday has 0.5 + 0.5 h, so 1 h fits after a fly-on of no time and 1.1 h does not', () => {
    const input = base({
      shifts: { timeZone: 'America/New_York', days: [1, 2, 3, 4, 5], start: '07:00', end: '15:30' },
      turns: [
        { id: 'T1', design: 'A', from: '2026-03-04T07:00:00-05:00', to: '2026-03-06T15:00:00-05:00' },
        { id: 'T2', design: 'B', from: '2026-03-09T07:30:00-04:00', to: '2026-03-10T15:00:00-04:00' },
      ],
    });
    const withHours = (hours: number): PlanInput => ({
      ...input,
      turnaround: { ...input.turnaround, flyOnH: 0, regangH: [{ from: 'A', to: 'B', hours }] },
    });
    expect(runs(withHours(1))).toBe('T1>T2');
    expect(runs(withHours(1.1))).toBe('T1 T2');
  });
});

describe('equal costs', () => {
  test('fewer runs: two gangs that cost nothing are still one run', () => {
    const input = base({ labourPerH: 0 });
    expect(runs(input)).toBe('T1>T2');
  });

  test('the order of the input: of two equal gangs the first in the list is followed', () => {
    const input = base();
    const [first, second] = [input.turns[0]!, input.turns[1]!];
    expect(runs({ ...input, turns: [{ ...first, id: 'X' }, { ...first, id: 'Y' }, second] })).toBe('X>T2 Y');
    expect(runs({ ...input, turns: [second, { ...first, id: 'Y' }, { ...first, id: 'X' }] })).toBe('Y>T2 X');
  });
});

describe('shortfalls', () => {
  test('common pieces between two turns count for the earlier, those built in for the later', () => {
    const components = [
      { code: 'P', stock: 0, hirePerDay: 0 },
      { code: 'L', stock: 19, hirePerDay: 0 },
    ];
    const input = base({ components });
    const made = plan({ ...input, turns: [input.turns[0]!, { ...input.turns[1]!, design: 'B' }] });
    expect(made.runs).toEqual([{ turns: ['T1', 'T2'] }]);
    // Re-ganging takes 3.6 h: so long after the strip the two panels are out, so long before the set the six locks are in.
    expect(
      made.shortfalls.map(({ component, quantity, turns }) => [component, quantity, turns.join(' ')]),
    ).toEqual([
      ['P', 10, 'T1'],
      ['P', 8, 'T1 T2'],
      ['L', 1, 'T1'],
      ['L', 7, 'T1 T2'],
    ]);
    expect(made.shortfalls[0]).toMatchObject({
      from: '2026-03-01T23:00:00-05:00',
      to: '2026-03-04T18:36:00-05:00',
    });
    expect(made.shortfalls[3]).toMatchObject({
      from: '2026-03-05T03:24:00-05:00',
      to: '2026-03-06T18:00:00-05:00',
    });
  });
});

function place(input: unknown): string | undefined {
  return planInput.safeParse(input).error?.issues[0]?.path.join('.');
}

function looseFrom(offset: string): PlanInput['loose'] {
  return [
    { id: 'X', pieces: { P: 12 }, from: `2026-03-02T07:00:00${offset}`, to: '2026-03-02T12:00:00-05:00' },
  ];
}

describe('the door', () => {
  test('the input has a JSON Schema that refuses unknown keys', () => {
    expect(z.toJSONSchema(calcPlan.input, { io: 'input' })).toMatchObject({
      type: 'object',
      additionalProperties: false,
    });
  });

  test('instants without offset, negative quantities, unknown keys are refused with their place', () => {
    const input = base();
    expect(place({ ...input, turns: [{ ...input.turns[0]!, from: '2026-03-02T07:00:00' }] })).toBe(
      'turns.0.from',
    );
    expect(place({ ...input, turns: [{ ...input.turns[0]!, to: '2026-02-30T07:00:00Z' }] })).toBe(
      'turns.0.to',
    );
    expect(place({ ...input, designs: [{ ...input.designs[0]!, pieces: { P: -1 } }] })).toBe(
      'designs.0.pieces.P',
    );
    expect(place({ ...input, components: [{ code: 'P', stock: -1, hirePerDay: 1 }] })).toBe(
      'components.0.stock',
    );
    expect(planInput.safeParse({ ...input, colour: 'red' }).success).toBe(false);
    expect(planInput.safeParse(input).success).toBe(true);
  });

  test('instants out carry the offset of the first instant in, Z where it is written so', () => {
    expect(plan(base({ turns: [], loose: looseFrom('Z') })).shortfalls[0]).toMatchObject({
      from: '2026-03-02T07:00:00Z',
      to: '2026-03-02T17:00:00Z',
    });
    expect(plan(base({ turns: [], loose: looseFrom('+05:30') })).shortfalls[0]).toMatchObject({
      to: '2026-03-02T22:30:00+05:30',
    });
  });

  test('no turns at all cost nothing and are proven', () => {
    expect(plan(base({ turns: [] }))).toMatchObject({
      runs: [],
      shortfalls: [],
      cost: { total: 0 },
      bound: 0,
      gapPercent: 0,
      proven: true,
    });
  });
});

describe('input that one field alone cannot show to be wrong', () => {
  const input = base();
  const [first, second] = [input.turns[0]!, input.turns[1]!];
  const cases: [string, string, PlanInput][] = [
    [
      'unknown-component',
      'designs[0].pieces.X',
      { ...input, designs: [{ ...input.designs[0]!, pieces: { X: 1 } }] },
    ],
    [
      'unknown-component',
      'loose[0].pieces.X',
      { ...input, loose: [{ id: 'L', pieces: { X: 1 }, from: first.from, to: first.to }] },
    ],
    [
      'unknown-component',
      'turnaround.regangPerPieceH.X',
      { ...input, turnaround: { ...input.turnaround, regangPerPieceH: { X: 1 } } },
    ],
    ['unknown-design', 'turns[1].design', { ...input, turns: [first, { ...second, design: 'Z' }] }],
    [
      'unknown-design',
      'turnaround.regangH[0].to',
      { ...input, turnaround: { ...input.turnaround, regangH: [{ from: 'A', to: 'Z', hours: 1 }] } },
    ],
    [
      'ends-before-it-begins',
      'turns[0].to',
      { ...input, turns: [{ ...first, from: first.to, to: first.from }, second] },
    ],
    [
      'ends-before-it-begins',
      'loose[0].to',
      { ...input, loose: [{ id: 'L', pieces: {}, from: first.to, to: first.from }] },
    ],
    ['named-twice', 'turns[1].id', { ...input, turns: [first, { ...second, id: 'T1' }] }],
    [
      'named-twice',
      'components[2].code',
      { ...input, components: [...input.components, input.components[0]!] },
    ],
    ['named-twice', 'designs[3].code', { ...input, designs: [...input.designs, input.designs[0]!] }],
    [
      'named-twice',
      'turnaround.regangH[1]',
      {
        ...input,
        turnaround: { ...input.turnaround, regangH: [1, 2].map((hours) => ({ from: 'A', to: 'B', hours })) },
      },
    ],
    [
      'stock-given-twice',
      'components[0].stock[1].from',
      {
        ...input,
        components: [
          {
            code: 'P',
            stock: [
              { from: first.from, quantity: 1 },
              { from: '2026-03-02T12:00:00Z', quantity: 2 },
            ],
            hirePerDay: 1,
          },
          input.components[1]!,
        ],
      },
    ],
    [
      'no-working-day',
      'shifts.days',
      { ...input, shifts: { timeZone: 'UTC', days: [], start: '07:00', end: '15:00' } },
    ],
    [
      'work-too-long',
      'designs[0]',
      {
        ...input,
        designs: [{ ...input.designs[0]!, assembleH: 99_000 }, ...input.designs.slice(1)],
        shifts: { timeZone: 'UTC', days: [1], start: '07:00', end: '15:00' },
      },
    ],
    [
      'span-too-long',
      'turns',
      {
        ...input,
        turns: [first, { ...second, from: '2126-03-05T07:00:00-05:00', to: '2126-03-06T07:00:00-05:00' }],
      },
    ],
  ];
  test('4,001 turns are too many at once', () => {
    const turns = Array.from({ length: 4001 }, (_, index) => ({ ...first, id: `T${index}` }));
    expect(planReuse({ ...input, turns }, () => 0)).toMatchObject({
      ok: false,
      error: { code: 'too-many-turns', field: 'turns' },
    });
  });

  test.each(cases)('%s at %s', (code, field, wrong) => {
    const made = planReuse(planInput.parse(wrong), () => 0);
    expect(made.ok ? 'not refused' : { code: made.error.code, field: made.error.field }).toEqual({
      code,
      field,
    });
  });
});
