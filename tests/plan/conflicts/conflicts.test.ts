// Entries that cannot all hold: named together, and no more of them than clash. Dates and hours invented; the hand sums
// stand beside each.
import { describe, expect, test } from 'vitest';
import { circlesIn, shortestCircle } from '../../../core/plan/circles.ts';
import { neverThere } from '../../../core/plan/conflicts/never-there.ts';
import { noWorkingTime } from '../../../core/plan/conflicts/no-working-time.ts';
import { windowConflicts } from '../../../core/plan/conflicts/window.ts';
import { msOf } from '../../../core/plan/local-time.ts';
import type { Gate } from '../../../core/plan/pours.ts';
import { numbersFrom } from '../../bench/jobs.ts';
import { job, pourOf } from '../pours-for-tests.ts';

const steel = (promised: string, before: Gate['before'], done = false): Gate => ({
  name: 'steel fixed',
  who: 'bar crew',
  before,
  promised,
  done,
});

describe('A window shorter than its work', () => {
  // Face first: 4 h and 3 h, to be done by Wednesday 12:00. From 07:00 there are 5 h on Wednesday, 8.5 h on Tuesday.
  test('a gate before setting on the day of the pour leaves 5 of the 7 hours, and is named with the work and the finish', () => {
    const [found, ...more] = windowConflicts(job, pourOf({ gates: [steel('2026-03-04', 'set')] }), [], null);
    expect(more).toEqual([]);
    expect(found?.rule).toBe('window-too-short');
    expect(found?.message).toContain('steel fixed (bar crew) is promised for 2026-03-04');
    expect(found?.message).toContain('setting takes 4 h and closing 3 h');
    // 5 h on Wednesday and the last 2 h of Tuesday's shift, which ends at 15:30.
    expect(found?.message).toContain('had to begin by 2026-03-03T13:30:00-05:00');
  });

  test('a day earlier there is time, and a gate that is done waits for nobody', () => {
    const early = pourOf({ gates: [steel('2026-03-03', 'set')] });
    expect(windowConflicts(job, early, [], null)).toEqual([]);
    const done = pourOf({ gates: [steel('2026-03-04', 'set', true)] });
    expect(windowConflicts(job, done, [], null)).toEqual([]);
  });

  test('a gate before closing clashes with the closing alone', () => {
    const pour = pourOf({
      finishAt: '2026-03-04T09:00:00-05:00',
      gates: [steel('2026-03-04', 'close')],
    });
    const [found] = windowConflicts(job, pour, [], null);
    expect(found?.message).toContain('closing takes 3 h');
    expect(found?.message).not.toContain('setting takes');
  });

  test('of several gates only the last one is named', () => {
    const gates = [steel('2026-02-27', 'set'), { ...steel('2026-03-04', 'set'), name: 'waterstop' }];
    const [found] = windowConflicts(job, pourOf({ gates }), [], null);
    expect(found?.message).toContain('waterstop');
    expect(found?.message).not.toContain('steel fixed');
  });

  test('a storey below that is strong too late is named', () => {
    const below = pourOf({ code: 'W0', finishAt: '2026-03-02T12:00:00-05:00' });
    const standsOn = { pour: 'W0', strengthH: 40 };
    // Strong on Wednesday at 04:00; 5 h are left of 7.
    const [found] = windowConflicts(job, pourOf(), [below], standsOn);
    expect(found?.message).toContain('W0 below is strong enough 40 h after its finish');
    expect(windowConflicts(job, pourOf(), [below], { ...standsOn, strengthH: 20 })).toEqual([]);
  });
});

describe('A component that nobody has', () => {
  const turn = { id: 'W1/A1', pour: 'W1', side: 'A', design: 'GA', from: 0, to: 1 } as const;
  const tie = {
    id: 'W1/ties',
    pour: 'W1',
    component: 'TR',
    quantity: 4,
    purpose: 'ties',
    counted: true,
    from: 0,
    to: 1,
  };
  const most = new Map([['P836', 4]]);
  const there = (component: string) => ({
    most: most.get(component) ?? 0,
    canBeHired: component === 'LK',
  });

  test('is named with the design or, where it is loose, the pour that asks for it', () => {
    const found = neverThere([turn], [tie], () => ({ P836: 4, LK: 20, R8: 3, WB: 0 }), there);
    expect(found.map(({ where }) => where)).toEqual(['R8', 'TR']);
    expect(found[0]?.message).toContain('needed by GA');
    expect(found[1]?.message).toContain('needed by W1');
  });
});

describe('A calendar without working time', () => {
  test('is named with the dates that took it away, where there is work on them', () => {
    const off = ['2026-03-02', '2026-03-03', '2026-03-07', '2026-03-20'];
    const closed = { ...job, shifts: { ...job.shifts, off } };
    const [from, to] = [msOf('2026-03-02T07:00:00-05:00'), msOf('2026-03-03T12:00:00-05:00')];
    const [found] = noWorkingTime(closed, from, to);
    expect(found?.message).toContain('From 2026-03-02 to 2026-03-03');
    expect(found?.message).toContain('2026-03-02, 2026-03-03 are off');
    expect(noWorkingTime(closed, from, msOf('2026-03-04T08:00:00-05:00'))).toEqual([]);
    expect(noWorkingTime(job, from, to)).toEqual([]);
  });
});

describe('A circle of pours', () => {
  test('is named by its shortest circle: what can be left out of it is left out', () => {
    const before = new Map([
      ['A', ['B']],
      ['B', ['C']],
      ['C', ['D', 'B']],
      ['D', ['A']],
    ]);
    expect(shortestCircle(['A', 'B', 'C', 'D'], before)).toEqual(['B', 'C']);
  });

  test('300 random sequences: the circle named is one, and no two of its pours are linked but by neighbours', () => {
    let circles = 0;
    for (let seed = 1; seed <= 300; seed += 1) {
      const next = numbersFrom(seed);
      const codes = Array.from({ length: 3 + Math.floor(next() * 9) }, (_, index) => `P${index}`);
      const before = new Map(
        codes.map((code) => [code, codes.filter((other) => other !== code && next() < 0.25)]),
      );
      for (const walked of circlesIn(before)) {
        circles += 1;
        const circle = shortestCircle(walked, before);
        expect(new Set(circle).size).toBe(circle.length);
        for (const [place, code] of circle.entries()) {
          const inside = (before.get(code) ?? []).filter((each) => circle.includes(each));
          expect([seed, inside]).toEqual([seed, [circle[(place + 1) % circle.length]]]);
        }
      }
    }
    expect(circles).toBeGreaterThan(200);
  });
});
