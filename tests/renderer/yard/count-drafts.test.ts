import { describe, expect, test } from 'vitest';
import {
  type EntryDraft,
  keyOf,
  readEntry,
  withCell,
} from '../../../renderer/screens/yard/counts/entry-draft.ts';
import {
  beginLine,
  explanation,
  isExplained,
  restOf,
  suggested,
  toExplained,
} from '../../../renderer/screens/yard/counts/explain-draft.ts';
import type { DifferenceLine } from '../../../renderer/screens/yard/counts/count-words.ts';

const line = { location: 'ENN', component: 'LK', owner: null, bundleSize: null };
const key = keyOf(line);

describe('what is typed in the grid of a count', () => {
  test('a line with one cell filled is counted, one without is not', () => {
    const draft = withCell({}, key, 'ready', '126');
    expect(readEntry([line, { ...line, component: 'R8' }], draft)).toEqual({
      lines: [{ location: 'ENN', component: 'LK', owner: null, condition: 'ready', quantity: 126 }],
      keys: [key],
      errors: [],
    });
  });

  test('how it was written stays with it where that says more: 61 + ~20', () => {
    const draft = withCell({}, key, 'ready', ' 61 + ~20 ');
    expect(readEntry([line], draft).lines).toMatchObject([
      { quantity: 81, uncertainty: 20, note: '61 + ~20' },
    ]);
  });

  test('what cannot be read names its cell, and the line is not entered by half', () => {
    const draft: EntryDraft = { [key]: { ready: '126', 'to-clean': 'some' } };
    expect(readEntry([line], draft).errors).toMatchObject([{ line: key, column: 'to-clean' }]);
  });
});

const short = {
  location: 'ENN',
  component: 'LK',
  owner: null,
  difference: -16,
  conditionMoves: [{ from: 'ready', to: 'to-clean', quantity: 3 }],
  offered: [
    { how: 'lost', places: [], isPlaceNeeded: false },
    { how: 'left-at-pour', places: ['W2'], isPlaceNeeded: false },
  ],
} as unknown as DifferenceLine;

describe('how a difference is explained', () => {
  test('pieces in another condition are said to be so from the start; 16 are left', () => {
    const draft = beginLine(short);
    expect(draft.explained).toMatchObject([{ how: 'condition-changed', quantity: '3' }]);
    expect(restOf(short, draft)).toEqual({ pieces: 16, inOtherCondition: 0, leftOpen: 0 });
    expect(isExplained(short, draft)).toBe(false);
  });

  test('4 lost and 12 left at W2 explain it; less is left open where that is ticked', () => {
    const lost = { ...beginLine(short), explained: [...beginLine(short).explained, explanation('lost', 4)] };
    expect(isExplained(short, { ...lost, open: true })).toBe(true);
    expect(toExplained(short, { ...lost, open: true }).leftOpen).toBe(12);
    const all = { ...lost, explained: [...lost.explained, explanation('left-at-pour', 12, 'W2')] };
    expect(isExplained(short, all)).toBe(true);
    expect(toExplained(short, all)).toMatchObject({
      leftOpen: 0,
      explained: [
        { how: 'condition-changed' },
        { how: 'lost', quantity: 4 },
        { how: 'left-at-pour', place: 'W2' },
      ],
    });
  });

  test('a cause suggests an explanation for as many as are left, where it may be one', () => {
    const cause = {
      rule: 'last-move',
      place: 'W2',
      kind: 'pour',
      way: 'came-from',
      at: '',
      quantity: 102,
    } as const;
    expect(suggested(cause, short, 12)).toMatchObject({ how: 'left-at-pour', quantity: '12', place: 'W2' });
    expect(
      suggested({ rule: 'look-alike', other: 'X', otherDifference: 1, quantity: 1 }, short, 12),
    ).toBeNull();
    expect(suggested(cause, short, 0)).toBeNull();
  });

  test('what is not a number of pieces explains none', () => {
    const draft = { open: false, explained: [{ ...explanation('lost', 1), quantity: 'four' }] };
    expect(restOf(short, draft).pieces).toBe(16);
  });
});
