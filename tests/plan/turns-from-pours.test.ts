import { describe, expect, test } from 'vitest';
import { instantText } from '../../core/plan/local-time.ts';
import { turnsFromPours } from '../../core/plan/turns-from-pours.ts';
import { job, pourOf } from './pours-for-tests.ts';

const inch = 25_400_000;
/** 24-36-36 wide, a hole in the middle of each panel; `GM` is the other hand. */
const designs = new Map([
  ['GA', { widthNm: 96 * inch, holes: [12, 42, 78].map((x) => ({ xNm: x * inch, yNm: 24 * inch })) }],
  ['GM', { widthNm: 96 * inch, holes: [18, 54, 84].map((x) => ({ xNm: x * inch, yNm: 24 * inch })) }],
]);
const [sideA, sideB] = pourOf().sides;
const text = (ms: number): string => instantText(ms, job.timeZone);
const turnsOf = (...pours: Parameters<typeof turnsFromPours>[1]) => turnsFromPours(job, pours, designs);

describe('turns', () => {
  test('each gang stands from the setting of its own side until the strip ends', () => {
    const { turns } = turnsOf(pourOf());
    expect(turns.map(({ id, from, to }) => [id, text(from), text(to)])).toEqual([
      ['W1/A1', '2026-03-02T07:00:00-05:00', '2026-03-05T15:00:00-05:00'],
      ['W1/B1', '2026-03-03T07:00:00-05:00', '2026-03-05T15:00:00-05:00'],
    ]);
  });

  test('loose pieces go with their side, those of both sides with the closing one', () => {
    const loose = [
      { side: 'A', component: 'BR', quantity: 4, purpose: 'braces' },
      { side: 'both', component: 'LK', quantity: 10, purpose: 'locks between gangs' },
    ] as const;
    const found = turnsOf(pourOf({ loose })).loose;
    expect(found.map(({ id, from }) => [id, text(from)])).toEqual([
      ['W1/loose-1', '2026-03-02T07:00:00-05:00'],
      ['W1/loose-2', '2026-03-03T07:00:00-05:00'],
    ]);
  });
});

describe('ties', () => {
  test('the far side of a one-hand gang is the other hand: 3 pairs of opposite holes are 3 ties, not 6', () => {
    const pour = pourOf({
      tieComponent: 'TR',
      sides: [sideA, { ...sideB, gangs: [{ design: 'GM', atNm: 0 }] }],
    });
    expect(turnsOf(pour).loose).toMatchObject([
      { id: 'W1/ties', component: 'TR', quantity: 3, counted: true },
    ]);
  });

  test('the same gang on both sides has no hole opposite but where it mirrors itself: none here', () => {
    expect(turnsOf(pourOf({ tieComponent: 'TR' })).loose).toEqual([]);
  });

  test('a hole that two gangs share at their seam counts once', () => {
    const edge = new Map([
      ['GE', { widthNm: 10 * inch, holes: [0, 10].map((x) => ({ xNm: x * inch, yNm: 0 })) }],
    ]);
    const gangs = [0, 10].map((at) => ({ design: 'GE', atNm: at * inch }));
    const pour = pourOf({
      tieComponent: 'TR',
      sides: [
        { ...sideA, gangs },
        { ...sideB, gangs },
      ],
    });
    expect(turnsFromPours(job, [pour], edge).loose).toMatchObject([{ quantity: 3 }]);
  });
});
