import { describe, expect, test } from 'vitest';
import { countDifferences } from '../../core/yard/count-differences.ts';
import { checkExplained, type ExplainedLine } from '../../core/yard/count-explained.ts';
import { countMovements } from '../../core/yard/count-movements.ts';
import type { Movement } from '../../core/yard/movement.ts';
import type { CountLine, ExplanationLine } from '../../core/yard/stock-count.ts';
import { counted, entry, facts, type Found, line, locations, move, owners, stockAt } from './a-count.ts';

type Counted = CountLine & { readonly found: Found; readonly uncertainty?: number };

function book(
  ledger: readonly Movement[],
  lines: readonly Counted[],
  explained: readonly ExplainedLine[],
  more: {
    readonly partners?: ReadonlyMap<string, readonly string[]>;
    readonly leaveOut?: boolean;
    readonly listed?: readonly CountLine[];
  } = {},
) {
  const differences = countDifferences(
    facts(
      ledger,
      more.listed ?? lines.map(({ location, component, owner }) => ({ location, component, owner })),
      [entry(1, lines)],
    ),
  );
  const checked = checkExplained(
    {
      differences,
      locations: new Map(locations.map(({ code, kind }) => [code, kind])),
      partners: more.partners ?? new Map(),
      leaveOut: more.leaveOut ?? false,
    },
    explained,
  );
  if (!checked.ok) return checked;
  return countMovements({
    count: { id: 'count-number-one', number: 1 },
    who: 'booker',
    lines: checked.value,
    stockAt: (at) => stockAt(ledger, at),
    locations,
    owners,
  });
}

const by = (
  of: CountLine,
  ...explained: readonly (Partial<ExplanationLine> & Pick<ExplanationLine, 'how' | 'quantity'>)[]
): ExplainedLine => ({
  ...of,
  explained: explained.map((each) => ({ remark: null, ...each })),
  leftOpen: 0,
});
const found = (of: CountLine, ready: number): Counted => ({ ...of, found: { ready } });
const movementsOf = (...of: Parameters<typeof book>): readonly Movement[] => {
  const made = book(...of);
  if (!made.ok) throw new Error(`${made.error.code}: ${made.error.message}`);
  return made.value;
};
const codeOf = (...of: Parameters<typeof book>): string => {
  const made = book(...of);
  return made.ok ? 'booked' : made.error.code;
};
const ledger = [move({ quantity: 100 })];
const LK = line();

const foundOf = (owner: object) =>
  movementsOf(ledger, [found(LK, 103)], [by(LK, { how: 'found', quantity: 3, ...owner })]);

describe('what each explanation becomes', () => {
  test('lost: from the place to the lost ones, at the moment it was counted, by the count, with the words', () => {
    const lost = by(LK, { how: 'lost', quantity: 5, remark: 'cast in' });
    expect(movementsOf(ledger, [found(LK, 95)], [lost])).toMatchObject([
      {
        id: 'count-number-one-1',
        quantity: 5,
        owner: 'OURS',
        from: 'YARD',
        to: 'LOST',
        reason: 'lost',
        at: counted,
        who: 'booker',
        noteNumber: 'N-1',
        paper: 'count-number-one',
        remark: 'Count N-1: lost; cast in',
      },
    ]);
  });

  test('found: from the lost ones, ours unless another owner is named', () => {
    expect(foundOf({})).toMatchObject([{ from: 'LOST', to: 'YARD', owner: 'OURS', reason: 'found' }]);
    expect(foundOf({ owner: 'H1' })).toMatchObject([{ owner: 'H1' }]);
  });

  test('not ours: found of an owner of kind others', () => {
    const notOurs = by(LK, { how: 'not-ours', quantity: 3 });
    expect(movementsOf(ledger, [found(LK, 103)], [notOurs])).toMatchObject([
      { owner: 'ANY', reason: 'found' },
    ]);
  });

  test('ours go first, then a supplier’s: 5 lost of 3 of ours and 97 on hire', () => {
    const mixed = [move({ quantity: 3 }), move({ owner: 'H1', quantity: 97 })];
    const lost = movementsOf(mixed, [found(LK, 95)], [by(LK, { how: 'lost', quantity: 5 })]);
    expect(lost.map(({ owner, quantity }) => [owner, quantity])).toEqual([
      ['OURS', 3],
      ['H1', 2],
    ]);
  });

  test('an owner that is named gives his own, and has to have them', () => {
    const mixed = [move({ quantity: 3 }), move({ owner: 'H1', quantity: 4 })];
    const lost = (quantity: number) => [by(LK, { how: 'lost', quantity, owner: 'H1' })];
    expect(movementsOf(mixed, [found(LK, 4)], lost(3))).toMatchObject([{ owner: 'H1', quantity: 3 }]);
    expect(codeOf(mixed, [found(LK, 2)], lost(5))).toBe('not-enough-there');
  });

  test('scrapped: to the scrap, with a second name', () => {
    const scrapped = (remark: string | null) => [by(LK, { how: 'scrapped', quantity: 2, remark })];
    expect(movementsOf(ledger, [found(LK, 98)], scrapped('seen by A. N. Other'))).toMatchObject([
      { to: 'SCRAP', reason: 'scrap', condition: 'ready', conditionAfter: 'scrapped' },
    ]);
    expect(codeOf(ledger, [found(LK, 98)], scrapped(null))).toBe('scrap-needs-a-name');
  });

  test('left at a pour: booked there where it is named, else it stays booked until the ticket', () => {
    const left = (place: object) => [by(LK, { how: 'left-at-pour', quantity: 12, ...place })];
    expect(movementsOf(ledger, [found(LK, 88)], left({ place: 'POUR' }))).toMatchObject([
      { to: 'POUR', reason: 'transfer' },
    ]);
    expect(movementsOf(ledger, [found(LK, 88)], left({}))).toEqual([]);
    expect(codeOf(ledger, [found(LK, 88)], left({ place: 'RACK' }))).toBe('wrong-place');
  });

  test('at another job, and moved without a note: both name the place', () => {
    const jobs = [by(LK, { how: 'at-other-job', quantity: 1, place: 'JOB' })];
    expect(movementsOf(ledger, [found(LK, 99)], jobs)).toMatchObject([{ from: 'YARD', to: 'JOB' }]);
    expect(codeOf(ledger, [found(LK, 99)], [by(LK, { how: 'at-other-job', quantity: 1 })])).toBe(
      'place-needed',
    );
    expect(
      codeOf(ledger, [found(LK, 99)], [by(LK, { how: 'moved-without-note', quantity: 1, place: 'JOB' })]),
    ).toBe('wrong-place');
  });

  test('over, moved here from a rack: taken from there, whose they are there', () => {
    const racked = [...ledger, move({ to: 'RACK', owner: 'H1', quantity: 4, condition: 'to-clean' })];
    const moved = (quantity: number) => [by(LK, { how: 'moved-without-note', quantity, place: 'RACK' })];
    expect(movementsOf(racked, [found(LK, 104)], moved(4))).toMatchObject([
      { from: 'RACK', to: 'YARD', owner: 'H1', condition: 'to-clean', conditionAfter: 'ready', quantity: 4 },
    ]);
    expect(codeOf(racked, [found(LK, 105)], moved(5))).toBe('not-enough-there');
  });

  test('miscounted and stacked with a look-alike move nothing', () => {
    expect(movementsOf(ledger, [found(LK, 95)], [by(LK, { how: 'miscounted', quantity: 5 })])).toEqual([]);
  });

  test('another condition: cleaned, to repair, set apart, scrapped, each by its own reason', () => {
    const lines = [
      { ...LK, found: { ready: 80, 'to-clean': 8, 'to-repair': 6, quarantine: 4, scrapped: 2 } },
    ];
    const made = movementsOf(ledger, lines, [by(LK, { how: 'condition-changed', quantity: 20 })]);
    expect(made.map(({ conditionAfter, reason, quantity }) => [conditionAfter, reason, quantity])).toEqual([
      ['to-clean', 'clean', 8],
      ['to-repair', 'repair', 6],
      ['quarantine', 'quarantine', 4],
      ['scrapped', 'scrap', 2],
    ]);
  });
});

const lines = (one: number, other: number) => [found(line('P836'), one), found(line('P436'), other)];
const stacked = (component: string, quantity: number) =>
  by(line(component), { how: 'stacked-with-look-alike', quantity });

describe('two lines at once', () => {
  const partners = new Map([
    ['P836', ['P436']],
    ['P436', ['P836']],
  ]);
  const panels = [move({ component: 'P836', quantity: 20 }), move({ component: 'P436', quantity: 20 })];
  test('19 and 21 stacked together: nothing moves, and both must say so', () => {
    const both = [stacked('P836', 1), stacked('P436', 1)];
    expect(movementsOf(panels, lines(19, 21), both, { partners })).toEqual([]);
    const one = [stacked('P836', 1), by(line('P436'), { how: 'found', quantity: 1 })];
    expect(codeOf(panels, lines(19, 21), one, { partners })).toBe('pair-unequal');
  });

  test('18 and 21: one is stacked, the other still missing', () => {
    const two = [
      by(line('P836'), { how: 'stacked-with-look-alike', quantity: 1 }, { how: 'lost', quantity: 1 }),
      stacked('P436', 1),
    ];
    expect(movementsOf(panels, lines(18, 21), two, { partners })).toMatchObject([
      { reason: 'lost', quantity: 1 },
    ]);
    expect(codeOf(panels, lines(18, 21), [stacked('P836', 2), stacked('P436', 1)], { partners })).toBe(
      'pair-unequal',
    );
  });

  test('what nobody takes for each other is not stacked together', () => {
    expect(codeOf(panels, lines(19, 21), [stacked('P836', 1), stacked('P436', 1)])).toBe('no-look-alike');
  });

  test('moved between two counted places: booked once, and each says the same', () => {
    const [yard, rack] = [line(), line('LK', 'RACK')];
    const racked = [...ledger, move({ to: 'RACK', quantity: 10 })];
    const moved = (there: number) => [
      by(yard, { how: 'moved-without-note', quantity: 5, place: 'RACK' }),
      by(rack, { how: 'moved-without-note', quantity: there, place: 'YARD' }),
    ];
    expect(movementsOf(racked, [found(yard, 95), found(rack, 15)], moved(5))).toMatchObject([
      { from: 'YARD', to: 'RACK', quantity: 5, reason: 'transfer' },
    ]);
    const only = [moved(5)[0]!, by(rack, { how: 'found', quantity: 5 })];
    expect(codeOf(racked, [found(yard, 95), found(rack, 15)], only)).toBe('pair-unequal');
  });

  test('owners mixed up: 2 of ours are with the supplier, 2 of his with us; each owner by itself', () => {
    const [ours, hired] = [line('R8', 'YARD', 'OURS'), line('R8', 'YARD', 'H1')];
    const rails = [
      move({ component: 'R8', quantity: 12 }),
      move({ component: 'R8', owner: 'H1', quantity: 6 }),
    ];
    const mixed = [
      by(ours, { how: 'owner-mixed', quantity: 2, owner: 'H1' }),
      by(hired, { how: 'owner-mixed', quantity: 2 }),
    ];
    const made = movementsOf(rails, [found(ours, 10), found(hired, 8)], mixed);
    expect(made.map(({ owner, from, to, quantity, reason }) => [owner, from, to, quantity, reason])).toEqual([
      ['OURS', 'YARD', 'H1', 2, 'owner-swap'],
      ['H1', 'H1', 'YARD', 2, 'owner-swap'],
    ]);
    const together = line('R8');
    expect(codeOf(rails, [found(together, 17)], [by(together, { how: 'owner-mixed', quantity: 1 })])).toBe(
      'owner-not-named',
    );
    expect(
      codeOf(
        rails,
        [found(ours, 10), found(hired, 8)],
        [mixed[0]!, by(hired, { how: 'found', quantity: 2 })],
      ),
    ).toBe('pair-unequal');
  });
});

describe('what is not booked', () => {
  test('a difference without an explanation, by name; left open by name it is', () => {
    const made = book(ledger, [found(LK, 95)], [by(LK, { how: 'lost', quantity: 3 })]);
    expect(made).toMatchObject({
      error: { code: 'unexplained', message: 'LK at YARD: 2 short, not explained.' },
    });
    expect(
      movementsOf(ledger, [found(LK, 95)], [{ ...by(LK, { how: 'lost', quantity: 3 }), leftOpen: 2 }]),
    ).toHaveLength(1);
  });

  test('more than the difference', () => {
    expect(codeOf(ledger, [found(LK, 95)], [by(LK, { how: 'lost', quantity: 6 })])).toBe(
      'explained-too-much',
    );
    expect(codeOf(ledger, [found(LK, 100)], [{ ...LK, explained: [], leftOpen: 1 }])).toBe(
      'explained-too-much',
    );
    expect(codeOf(ledger, [found(LK, 100)], [by(LK, { how: 'condition-changed', quantity: 1 })])).toBe(
      'explained-too-much',
    );
  });

  test('a word that does not fit: pieces over are not lost', () => {
    expect(codeOf(ledger, [found(LK, 105)], [by(LK, { how: 'lost', quantity: 5 })])).toBe(
      'not-an-explanation',
    );
    expect(codeOf(ledger, [found(LK, 95)], [by(LK, { how: 'found', quantity: 5 })])).toBe(
      'not-an-explanation',
    );
  });

  test('pieces in another condition that nobody speaks of', () => {
    expect(codeOf(ledger, [{ ...LK, found: { ready: 90, 'to-clean': 10 } }], [])).toBe('unexplained');
  });

  test('an uncertain figure: it can only be left open', () => {
    const bag = [{ ...found(LK, 101), uncertainty: 20 }];
    expect(codeOf(ledger, bag, [by(LK, { how: 'found', quantity: 1 })])).toBe('uncertain');
    expect(movementsOf(ledger, bag, [{ ...LK, explained: [], leftOpen: 1 }])).toEqual([]);
  });

  test('a line that nobody counted, unless it is left out', () => {
    const listed = [LK, line('R8')];
    expect(codeOf(ledger, [found(LK, 100)], [], { listed })).toBe('not-counted');
    expect(movementsOf(ledger, [found(LK, 100)], [], { listed, leaveOut: true })).toEqual([]);
    expect(codeOf(ledger, [found(LK, 100)], [by(line('X'), { how: 'lost', quantity: 1 })])).toBe(
      'unknown-line',
    );
  });
});
