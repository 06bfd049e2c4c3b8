// The most pieces that stand at once, held against the curves of the same turns and against looking at every moment.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mostStanding } from '../../core/plan/most-standing.ts';
import type { LooseTurn, PourTurn } from '../../core/plan/turns-from-pours.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_406);
const pieces: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  GA: { LK: 26, P836: 4 },
  GB: { LK: 16 },
};
const piecesOf = (design: string) => pieces[design] ?? {};

const turns = fc.array(
  fc
    .record({
      pour: fc.constantFrom('P1', 'P2', 'P3'),
      design: fc.constantFrom('GA', 'GB'),
      from: fc.integer({ min: 0, max: 40 }),
      length: fc.integer({ min: 1, max: 20 }),
    })
    .map(({ pour, design, from, length }): PourTurn => ({
      id: '',
      pour,
      side: 'A',
      design,
      from,
      to: from + length,
    })),
  { maxLength: 12 },
);
const loose = fc.array(
  fc
    .record({
      pour: fc.constantFrom('P1', 'P2', 'P3'),
      quantity: fc.integer({ min: 1, max: 30 }),
      from: fc.integer({ min: 0, max: 40 }),
      length: fc.integer({ min: 1, max: 20 }),
    })
    .map(({ pour, quantity, from, length }): LooseTurn => ({
      id: '',
      pour,
      component: 'LK',
      quantity,
      purpose: '',
      counted: false,
      from,
      to: from + length,
    })),
  { maxLength: 8 },
);

describe(`with seed ${seed}`, () => {
  test('looking at every moment finds no more pieces and no more pours at once, and as many somewhere', () => {
    fc.assert(
      fc.property(turns, loose, (ofTurns, ofLoose) => {
        const most = mostStanding(ofTurns, ofLoose, piecesOf);
        for (const component of ['LK', 'P836']) {
          let [held, pours] = [0, 0];
          for (let moment = 0; moment <= 60; moment += 1) {
            const stands = ({ from, to }: { readonly from: number; readonly to: number }): boolean =>
              from <= moment && moment < to;
            const there = [
              ...ofTurns
                .filter(stands)
                .map(({ pour, design }) => [pour, piecesOf(design)[component] ?? 0] as const),
              ...ofLoose
                .filter((each) => stands(each) && each.component === component)
                .map(({ pour, quantity }) => [pour, quantity] as const),
            ].filter(([, quantity]) => quantity > 0);
            held = Math.max(
              held,
              there.reduce((sum, [, quantity]) => sum + quantity, 0),
            );
            pours = Math.max(pours, new Set(there.map(([pour]) => pour)).size);
          }
          expect(most.get(component) ?? { pieces: 0, pours: 0 }).toEqual({ pieces: held, pours });
        }
      }),
      { seed, numRuns: 300 },
    );
  });
});
