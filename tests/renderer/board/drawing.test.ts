import { describe, expect, test } from 'vitest';
import { gateWords } from '../../../renderer/screens/board/board-rows.ts';
import { calendarDays } from '../../../renderer/parts/calendar-days.ts';
import { linksOf } from '../../../renderer/screens/board/links.ts';
import { pourBars } from '../../../renderer/screens/board/pour-bars.ts';
import { thenOf } from '../../../renderer/screens/board/then-words.ts';
import type { Turn } from '../../../renderer/screens/board/board-types.ts';
import { madeDays, madePour, madeTurn } from './made-board.ts';

describe('the bars of a pour', () => {
  const bars = pourBars(madePour());

  test('face first: side A is set, waits for steel, is closed with side B, cures, stands, is stripped', () => {
    expect(bars.a.map((bar) => bar.kind)).toEqual(['set', 'wait', 'closed', 'cure', 'stand', 'strip']);
    expect(bars.b.map((bar) => bar.kind)).toEqual(['set', 'closed', 'cure', 'stand', 'strip']);
  });

  test('every bar begins where the one before it ends', () => {
    for (const track of [bars.a, bars.b]) {
      for (const [index, bar] of track.entries()) {
        if (index > 0) expect(bar.fromMs).toBe(track[index - 1]?.toMs);
      }
    }
  });

  test('strength met on Saturday 15:00 waits 39 clock hours for Monday 07:00: the clock goes forward between', () => {
    const stand = bars.a.find((bar) => bar.kind === 'stand');
    expect(((stand?.toMs ?? 0) - (stand?.fromMs ?? 0)) / 3_600_000).toBe(39);
  });
});

describe('what follows a gang', () => {
  const turns: readonly Turn[] = [
    madeTurn('1', 'P04', 'GA', { how: 'fly-on', turn: '5', standsByH: 3 }),
    madeTurn('2', 'P04', 'GA', { how: 'fly-on', turn: '6', standsByH: 3 }),
    madeTurn('3', 'P04', 'GB', {
      how: 'regang',
      turn: '7',
      hours: 3,
      standsByH: 50,
      takenOut: { R12: 3 },
      putIn: { P824: 2, LK: 1, SH: 1 },
    }),
    madeTurn('4', 'P04', 'GC', { how: 'break-down', hours: 2, until: '2026-03-10T10:00:00-04:00' }),
    madeTurn(
      '5',
      'P07',
      'GA',
      { how: 'break-down', hours: 2, until: '' },
      { from: '2026-03-10T07:00:00-04:00' },
    ),
    madeTurn(
      '6',
      'P07',
      'GA',
      { how: 'break-down', hours: 2, until: '' },
      { from: '2026-03-10T07:00:00-04:00' },
    ),
    madeTurn(
      '7',
      'P08',
      'GD',
      { how: 'break-down', hours: 2, until: '' },
      { from: '2026-03-12T07:00:00-04:00' },
    ),
  ];
  const byId = new Map(turns.map((turn) => [turn.id, turn]));

  test('gangs of one fate are one phrase, the soonest first', () => {
    expect(thenOf(turns.slice(0, 4), byId).map((one) => one.words)).toEqual([
      '2 GA fly on to P07',
      'GB re-ganged for P08: +2 P824 +1 LK −3 R12, stands by 2 d',
      'GC broken down',
    ]);
  });

  test('two gangs that go the same way are one line', () => {
    const links = linksOf(turns);
    expect(links.map((link) => [link.fromPour, link.toPour, link.how, link.words])).toEqual([
      ['P04', 'P07', 'fly-on', '2 GA fly on'],
      ['P04', 'P08', 'regang', 'GB to GD: re-gang'],
    ]);
  });
});

describe('gates and moves', () => {
  const gate = {
    name: 'steel',
    who: 'Steel crew',
    before: 'close' as const,
    promised: '2026-03-12',
    late: false,
  };

  test('the gate promised first is named, the others are counted', () => {
    const words = gateWords(
      madePour({ openGates: [gate, { ...gate, name: 'pump', promised: '2026-03-13' }] }),
    );
    expect(words?.text).toBe('not ready: steel and 1 more, promised Thu 12 Mar');
    expect(words?.short).toBe('not ready: steel Thu 12, +1');
  });

  test('a late gate says late; no open gate says nothing', () => {
    expect(gateWords(madePour({ openGates: [{ ...gate, late: true }] }))?.short).toBe('late: steel Thu 12');
    expect(gateWords(madePour())).toBeNull();
  });

  test('Friday and one working day is three calendar days, back from Monday as well', () => {
    const days = madeDays('2026-03-02', 14);
    expect(calendarDays('2026-03-06', 1, days)).toBe(3);
    expect(calendarDays('2026-03-09', -1, days)).toBe(-3);
    expect(calendarDays('2026-03-06', 0, days)).toBe(0);
  });
});
