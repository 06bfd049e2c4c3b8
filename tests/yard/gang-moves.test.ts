// Gangs built, re-ganged and broken down: what moves, what is refused, and that over any history the gang holds its
// design's pieces and the ledger balances. That ours go in first and hired pieces come out first is common practice,
// no source.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answer } from '../../core/answer.ts';
import { checkMovements } from '../../core/yard/check-movements.ts';
import { breakDown, buildGang, gangContent, regangDifference, regangTo } from '../../core/yard/gang-moves.ts';
import type { Condition, LocationKind, Movement } from '../../core/yard/movement.ts';
import {
  movementsOf,
  type PieceMove,
  type Pieces,
  piecesOf,
  shortPieces,
} from '../../core/yard/piece-moves.ts';
import { stockAfter, type StockLine } from '../../core/yard/quantities.ts';

const line = (
  component: string,
  owner: string,
  location: string,
  quantity: number,
  condition: Condition = 'ready',
): StockLine => ({ component, owner, location, condition, quantity, basis: null, basisDate: null });
const order = { owners: ['OURS', 'HIRE'], notOf: ['FOUND'] };
const valueOf = (answered: Answer<readonly PieceMove[]>): readonly PieceMove[] => {
  if (!answered.ok) throw new Error(answered.error.message);
  return answered.value;
};
const short = (moves: readonly PieceMove[]) =>
  moves.map(
    (each) =>
      `${each.quantity} ${each.component} ${each.owner} ${each.from}>${each.to} ${each.conditionAfter}`,
  );

describe('building', () => {
  const stock = [line('P8', 'OURS', 'Y', 3), line('P8', 'HIRE', 'Y', 2), line('LK', 'OURS', 'Y', 9)];

  test('ours first, then hired, every piece issued to the gang', () => {
    const moves = valueOf(buildGang('G-1', { stock, pieces: { P8: 4, LK: 6 }, from: ['Y'], order }));
    expect(short(moves)).toEqual(['6 LK OURS Y>G-1 ready', '3 P8 OURS Y>G-1 ready', '1 P8 HIRE Y>G-1 ready']);
    expect(new Set(moves.map((each) => each.reason))).toEqual(new Set(['issue']));
  });

  test('both components that are short are named, and nothing moves', () => {
    const issue = { stock, pieces: { P8: 6, LK: 10 }, from: ['Y'], order };
    const refused = buildGang('G-1', issue);
    expect(refused.ok ? '' : refused.error.code).toBe('not-enough');
    expect(refused.ok ? '' : refused.error.message).toBe(
      '10 of LK are wanted at Y; there are 9: 9 ready at Y (OURS). ' +
        '6 of P8 are wanted at Y; there are 5: 3 ready at Y (OURS), 2 ready at Y (HIRE).',
    );
    expect(shortPieces(issue)).toEqual([
      { component: 'LK', wanted: 10, there: 9 },
      { component: 'P8', wanted: 6, there: 5 },
    ]);
  });

  test('a tag to which pieces are booked is not built again', () => {
    const refused = buildGang('G-1', {
      stock: [...stock, line('LK', 'OURS', 'G-1', 1)],
      pieces: { P8: 1 },
      from: ['Y'],
      order,
    });
    expect(refused.ok ? '' : refused.error.code).toBe('gang-not-empty');
  });
});

describe('re-ganging', () => {
  test('moves 2 P6 in, 1 P8 out and leaves the locks: hired comes out before ours', () => {
    const stock = [
      line('P8', 'OURS', 'G-1', 3),
      line('P8', 'HIRE', 'G-1', 1),
      line('LK', 'OURS', 'G-1', 6),
      line('P6', 'OURS', 'Y', 2),
    ];
    const issue = { stock, pieces: { P8: 3, P6: 2, LK: 6 }, from: ['Y'], order };
    const moves = valueOf(regangTo('G-1', issue, { place: 'Y', condition: 'to-clean' }));
    expect(short(moves)).toEqual(['1 P8 HIRE G-1>Y to-clean', '2 P6 OURS Y>G-1 ready']);
  });

  test('what is not ready comes out first and does not come out better', () => {
    const stock = [line('LK', 'OURS', 'G-1', 4), line('LK', 'OURS', 'G-1', 2, 'to-repair')];
    const issue = { stock, pieces: { LK: 3 }, from: ['Y'], order };
    expect(short(valueOf(regangTo('G-1', issue, { place: 'Y', condition: 'ready' })))).toEqual([
      '2 LK OURS G-1>Y to-repair',
      '1 LK OURS G-1>Y ready',
    ]);
  });
});

describe('breaking down', () => {
  const stock = [line('LK', 'OURS', 'G-1', 4), line('LK', 'HIRE', 'G-1', 2), line('P8', 'OURS', 'G-1', 2)];
  const out = { place: 'Y', condition: 'to-clean' as const };

  test('4 locks to clean, 2 to repair, 2 panels ready', () => {
    const moves = valueOf(
      breakDown('G-1', stock, out, [
        { component: 'LK', condition: 'to-clean', quantity: 4 },
        { component: 'LK', condition: 'to-repair', quantity: 2 },
        { component: 'P8', condition: 'ready', quantity: 2 },
      ]),
    );
    expect(short(moves)).toEqual([
      '4 LK OURS G-1>Y to-clean',
      '2 LK HIRE G-1>Y to-repair',
      '2 P8 OURS G-1>Y ready',
    ]);
  });

  test('5 locks found where 6 are booked, and 1 plank where none is: both named', () => {
    const refused = breakDown('G-1', stock, out, [
      { component: 'LK', condition: 'ready', quantity: 5 },
      { component: 'P8', condition: 'ready', quantity: 2 },
      { component: 'PK', condition: 'ready', quantity: 1 },
    ]);
    expect(refused.ok ? '' : refused.error.code).toBe('not-what-is-in-it');
    expect(refused.ok ? '' : refused.error.message).toBe(
      'LK: 5 entered, 6 booked to G-1; PK: 1 entered, 0 booked to G-1.',
    );
  });
});

const components = ['P8', 'P6', 'LK', 'R8'];
const kinds: ReadonlyMap<string, LocationKind> = new Map([
  ['OPEN', 'opening'],
  ['Y', 'yard'],
  ['G-1', 'gang'],
  ['G-2', 'gang'],
]);
const design = fc.record(
  Object.fromEntries(components.map((code) => [code, fc.integer({ min: 0, max: 4 })])) as Record<
    string,
    fc.Arbitrary<number>
  >,
);
const action = fc.record({
  what: fc.constantFrom('build', 'regang', 'break'),
  gang: fc.constantFrom('G-1', 'G-2'),
  design,
  condition: fc.constantFrom<Condition>('ready', 'ready', 'ready-hidden', 'to-clean'),
});
const openings = fc.array(
  fc.record({
    component: fc.constantFrom(...components),
    owner: fc.constantFrom('OURS', 'HIRE'),
    quantity: fc.integer({ min: 4, max: 20 }),
  }),
  { minLength: 4, maxLength: 12 },
);

const without0 = (pieces: Pieces): Pieces =>
  Object.fromEntries(Object.entries(pieces).filter(([, quantity]) => quantity > 0));

test('after any history each gang holds the pieces of its design, one broken down none, and the ledger balances', () => {
  let done = 0;
  fc.assert(
    fc.property(openings, fc.array(action, { maxLength: 20 }), (opened, actions) => {
      const ledger: Movement[] = opened.map((each, index) => ({
        ...each,
        id: `opening-${index}`,
        from: 'OPEN',
        to: 'Y',
        condition: 'ready',
        conditionAfter: 'ready',
        reason: 'opening',
        at: '2026-03-01T00:00:00Z',
        who: 'tester',
        noteNumber: null,
        remark: null,
        basis: 'counted',
        basisDate: '2026-03-01',
        reverses: null,
        paper: null,
      }));
      const owned = piecesOf(ledger);
      const built = new Map<string, Pieces>();
      for (const [index, { what, gang, design: pieces, condition }] of actions.entries()) {
        const stock = stockAfter(ledger);
        const issue = { stock, pieces, from: ['Y'], order };
        const out = { place: 'Y', condition };
        if ((what === 'build') === built.has(gang)) continue;
        const decided =
          what === 'build'
            ? buildGang(gang, issue)
            : what === 'regang'
              ? regangTo(gang, issue, out)
              : breakDown(gang, stock, out);
        if (!decided.ok) {
          expect(decided.error.code).toBe('not-enough');
          continue;
        }
        const at = `2026-03-02T00:${String(index).padStart(2, '0')}:00Z`;
        const added = movementsOf(decided.value, {
          id: `step-${index}`,
          at,
          who: 'tester',
          remark: null,
          paper: null,
        });
        const refusal = checkMovements(added, {
          components: new Set(components),
          owners: new Map([
            ['OURS', 'ours'],
            ['HIRE', 'supplier'],
          ]),
          locations: kinds,
          booked: new Map(),
          before: stock,
          since: [],
        });
        expect(refusal).toBeNull();
        if (what === 'regang') {
          const { takenOut, putIn } = regangDifference(piecesOf(gangContent(stock, gang)), pieces);
          const moved = Object.values({ ...takenOut, ...putIn }).reduce((sum, some) => sum + some, 0);
          expect(added.reduce((sum, each) => sum + each.quantity, 0)).toBe(moved);
        }
        ledger.push(...added);
        if (what === 'break') built.delete(gang);
        else built.set(gang, pieces);
        done += 1;
      }
      const after = stockAfter(ledger);
      for (const gang of ['G-1', 'G-2'])
        expect(piecesOf(gangContent(after, gang))).toEqual(without0(built.get(gang) ?? {}));
      // Every piece that was there at the beginning is still at one place, and none more.
      expect(without0(piecesOf(after.filter((each) => each.location !== 'OPEN')))).toEqual(owned);
      expect(Object.values(piecesOf(after)).every((sum) => sum === 0)).toBe(true);
    }),
    { numRuns: 300 },
  );
  expect(done).toBeGreaterThan(100);
});
