import { describe, expect, test } from 'vitest';
import { timeWords } from '../../../renderer/parts/time-words.ts';
import {
  basisWords,
  byDay,
  percentWords,
  rateWords,
} from '../../../renderer/screens/yard/condition/care-words.ts';
import { readHours, readOutcome, readPieces } from '../../../renderer/screens/yard/condition/clean-draft.ts';
import { beginRepair, readRepair } from '../../../renderer/screens/yard/condition/repair-draft.ts';
import { repairLines, standingWords } from '../../../renderer/screens/yard/condition/repair-lines.ts';

const clock = { timeZone: 'America/New_York', planFrom: '2026-02-23T00:00:00-05:00' };

const draft = { done: '12', readyHidden: '2', toRepair: '', scrapped: '1' };

const fieldOf = (part: Partial<typeof draft>): string | undefined => {
  const read = readOutcome({ ...draft, ...part });
  return read.ok ? undefined : read.error.field;
};

describe('what came out of cleaning, as typed', () => {
  test('of 12 done with 2 for hidden faces and 1 scrapped, 9 are ready', () => {
    const read = readOutcome(draft);
    expect(read.ok && read.value).toEqual({
      quantity: 12,
      ready: 9,
      readyHidden: 2,
      toRepair: 0,
      scrapped: 1,
    });
  });

  test('more told than done, nothing done, and words are refused at their fields', () => {
    expect(fieldOf({ scrapped: '11' })).toBe('done');
    expect(fieldOf({ done: '' })).toBe('done');
    expect(fieldOf({ toRepair: 'two' })).toBe('toRepair');
    expect(fieldOf({ toRepair: '-1' })).toBe('toRepair');
    expect(readPieces('1,250', 'done').ok).toBe(false);
  });

  test('hours are read with a point and with a comma', () => {
    expect(
      [readHours('2.5', 'hours'), readHours('2,5', 'hours')].map((read) => read.ok && read.value),
    ).toEqual([2.5, 2.5]);
    expect(readHours('an hour', 'hours').ok).toBe(false);
  });
});

describe('a repair, as typed', () => {
  const waiting = { component: 'P836', name: 'Panel', owner: 'OURS', location: 'REP', quantity: 1 };
  const begun = beginRepair(waiting, timeWords(clock.timeZone).full);

  test('begins with the pieces that wait, and is kept with its day by the clock of the job', () => {
    const { repair } = readRepair(
      { ...begun, fault: ' hole ', hours: '3', due: '11 Mar 15:00', donors: [] },
      clock.timeZone,
      clock.planFrom,
    );
    expect(repair).toEqual({
      component: 'P836',
      owner: 'OURS',
      place: 'REP',
      quantity: 1,
      fault: 'hole',
      hours: 3,
      dueAt: '2026-03-11T15:00:00-04:00',
      partsFrom: [],
      remark: null,
    });
  });

  test('without a fault, with a day that cannot be read and a donor that is nowhere, each is told at its field', () => {
    const donor = { component: 'P830', owner: 'OURS', quantity: '1', place: '' };
    const { repair, wrong } = readRepair(
      { ...begun, due: '3/4', donors: [donor] },
      clock.timeZone,
      clock.planFrom,
    );
    expect(repair).toBeNull();
    expect(Object.keys(wrong).sort()).toEqual(['dueAt', 'fault', 'partsFrom']);
  });

  test('the day that stands in the field is the day that it says', () => {
    const words = timeWords(clock.timeZone);
    const row = {
      ...waiting,
      id: 'repair-1',
      version: 1,
      state: 'open' as const,
      late: false,
      place: 'REP',
      fault: 'hole',
      hours: null,
      dueAt: '2026-03-11T15:00:00-04:00',
      partsFrom: [],
      done: null,
      remark: null,
    };
    const again = beginRepair(row, words.full);
    expect(readRepair(again, clock.timeZone, clock.planFrom).repair?.dueAt).toBe(row.dueAt);
  });

  test('pieces that wait stand before repairs, and say so', () => {
    const lines = repairLines({ repairs: [], waiting: [waiting] });
    expect(lines.map((line) => [line.place, standingWords(line)])).toEqual([['REP', 'waits']]);
  });
});

const row = (date: string) => ({
  component: 'LK',
  name: 'Lock',
  quantity: 1,
  date,
  at: `${date}T15:30:00-04:00`,
  from: 'cleaning' as const,
});

describe('rates in words', () => {
  test('an own record says of how many, a default that it has no source', () => {
    expect(rateWords({ basis: 'own', worn: 5, of: 36 })).toBe('13.9 % (5 of 36)');
    expect(rateWords({ basis: 'default', millionths: 50_000 })).toBe('5 %');
    expect(basisWords({ basis: 'default', millionths: 50_000 }, 3)).toBe('default, no source');
    expect(basisWords({ basis: 'own', worn: 5, of: 36 }, 12)).toBe('own record, 12 turns');
    // The demo scenario's 16 locks short: 4.7 % of 340 owned and 11.3 % of 142 expected.
    expect([percentWords(16, 340), percentWords(16, 142)]).toEqual(['4.7 %', '11.3 %']);
  });

  test('what comes back is told by its day, the earliest first', () => {
    expect(
      byDay([row('2026-03-12'), row('2026-03-11'), row('2026-03-12')]).map(([date, rows]) => [
        date,
        rows.length,
      ]),
    ).toEqual([
      ['2026-03-11', 1],
      ['2026-03-12', 2],
    ]);
  });
});
