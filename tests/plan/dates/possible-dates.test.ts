// From when a pour can have a date and what keeps it from the day before; and which three of many dates are shown.
import { describe, expect, test } from 'vitest';
import { chooseDates } from '../../../core/plan/dates/choose-dates.ts';
import type { Around } from '../../../core/plan/dates/hold-back.ts';
import { possibleDates } from '../../../core/plan/dates/possible-dates.ts';
import { msOf } from '../../../core/plan/local-time.ts';
import { pourTimes } from '../../../core/plan/pour-times.ts';
import type { Gate, Pour } from '../../../core/plan/pours.ts';
import { job, pourOf } from '../pours-for-tests.ts';

// The pour is set on a Monday, closed on Tuesday, finished on Wednesday at noon: two working days after its first set.
const before = pourOf({ code: 'W0', finishAt: '2026-03-06T12:00:00-05:00' });

function around(parts: Partial<Around> = {}): Around {
  const nowMs = msOf('2026-03-02T06:00:00-05:00');
  return { job, times: new Map(), standsOn: new Map(), nowMs, ...parts };
}

const withBefore = new Map([['W0', pourTimes(before, job)]]);
const gate = (name: string, step: Gate['before'], promised: string): Gate => ({
  name,
  who: 'Steel crew',
  before: step,
  promised,
  done: false,
});

describe('the earliest date is the first on which nothing holds a pour back', () => {
  const cases: readonly (readonly [what: string, pour: Pour, around: Around, first: string, held: string])[] =
    [
      ['now: set today, finished in two days', pourOf(), around(), '2026-03-04', 'first-day'],
      [
        'now at eight: today the set was to begin at seven',
        pourOf(),
        around({ nowMs: msOf('2026-03-02T08:00:00-05:00') }),
        '2026-03-05',
        'first-day',
      ],
      [
        'a pour before it that is finished on Friday at noon: Monday',
        pourOf({ after: ['W0'] }),
        around({ times: withBefore }),
        '2026-03-09',
        'after',
      ],
      [
        'a storey below, strong 60 hours after Friday noon, on Monday 00:00 and a clock change between: set on Monday',
        pourOf(),
        around({ times: withBefore, standsOn: new Map([['W1', { pour: 'W0', strengthH: 60 }]]) }),
        '2026-03-11',
        'stands-on',
      ],
      [
        'steel before the close promised for Thursday: closed on Thursday, finished on Friday',
        pourOf({ gates: [gate('wall steel', 'close', '2026-03-05')] }),
        around(),
        '2026-03-06',
        'gate',
      ],
      [
        'an inspection before the pour promised for Saturday: Monday',
        pourOf({ gates: [gate('inspection', 'pour', '2026-03-07')] }),
        around(),
        '2026-03-09',
        'gate',
      ],
    ];
  for (const [what, pour, given, first, held] of cases)
    test(what, () => {
      const { dates: found, heldBack } = possibleDates(pour, given, 3);
      expect(found.map((each) => each.pour.finishAt.slice(0, 10))[0]).toBe(first);
      expect(found).toHaveLength(3);
      expect(heldBack?.kind).toBe(held);
    });

  test('a gate that is done and a pour without a date hold nothing back', () => {
    const pour = pourOf({
      after: ['undated'],
      gates: [{ ...gate('steel', 'set', '2026-05-01'), done: true }],
    });
    expect(possibleDates(pour, around(), 1).dates[0]?.pour.finishAt).toBe('2026-03-04T12:00:00-05:00');
  });

  test('its sides go with it by working days, over the weekend too', () => {
    const [found] = possibleDates(pourOf({ after: ['W0'] }), around({ times: withBefore }), 1).dates;
    expect(found?.pour.sides.map(({ setAt }) => setAt)).toEqual([
      '2026-03-05T07:00:00-05:00',
      '2026-03-06T07:00:00-05:00',
    ]);
    expect(found?.pour.finishAt).toBe('2026-03-09T12:00:00-04:00');
  });
});

const shown = (text: string): string =>
  chooseDates(dates(text))
    .map(({ date, merits }) => [date.at, ...merits].join(' '))
    .join(', ');

describe('three of many', () => {
  test('earliest, cheapest and the first that breaks nothing are three', () =>
    expect(shown('2/500 1/400 0/450 0/460')).toBe('0 earliest, 1 cheapest, 2 breaks-nothing'));
  test('where one is all of it, the two next cheap ones that break nothing stand beside', () =>
    expect(shown('0/400 0/460 1/400 0/450')).toBe('0 earliest cheapest breaks-nothing, 1, 3'));
  test('where all break something, the first that breaks the least', () =>
    expect(shown('3/400 2/500 2/450 9/100')).toBe('0 earliest, 1 breaks-least, 3 cheapest'));
  test('pieces that cannot be had come before money', () => {
    const [first, second] = dates('1/500 1/900');
    if (first === undefined || second === undefined) throw new Error('no dates');
    const chosen = chooseDates([{ ...first, unmet: 5 }, second]);
    expect(chosen.find(({ merits }) => merits.includes('cheapest'))?.date.at).toBe(1);
  });
  test('of two there are two, of none none', () => {
    expect(chooseDates(dates('1/5 1/6'))).toHaveLength(2);
    expect(chooseDates([])).toEqual([]);
  });
});

/** Each date as breaks/cost. */
function dates(text: string) {
  return text.split(' ').map((each, at) => {
    const [breaks, costCents] = each.split('/').map(Number);
    return { at, breaks: breaks ?? 0, costCents: costCents ?? 0, unmet: 0 };
  });
}
