// Locks where two gangs stand side by side. Figures of the tables are common practice, no source. Two gangs drawn as
// one must take the locks of the two apart and those of the edge where they meet.
import { describe, expect, test } from 'vitest';
import type { RuleTables } from '../../core/catalogue/rules.ts';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import { madeUp } from '../../core/gang/made-up.ts';
import { meetingJoints } from '../../core/gang/meeting-joints.ts';
import type { TakeOff } from '../../core/gang/take-off.ts';
import { designOf, systemWith, taken } from './common-practice.ts';
import { Dice, randomDesign, randomSystem } from './random-designs.ts';

const foot = 304_800_000;
const inch = 25_400_000;
const system = systemWith();

function of(rows: Parameters<typeof designOf>[0], fillers: Parameters<typeof designOf>[1] = {}): TakeOff {
  return taken(system, designOf(rows, fillers));
}
const stack = of([
  ['P3x9', 0, 0],
  ['P3x4', 0, '9 ft'],
]);
const high = of([['P3x9', '50 ft', '2 ft']]);

describe('gangs side by side', () => {
  test('9 ft beside 9 and 4 ft take 4 locks, wherever each drawing begins', () => {
    expect(meetingJoints(high, stack, 0, system.rules).joints).toEqual([
      { kind: 'vertical', xNm: 3 * foot, yNm: 0, lengthNm: 9 * foot, locks: 4 },
    ]);
    const both = meetingJoints(stack, stack, 0, system.rules);
    expect(both.joints.map(({ yNm, lengthNm, locks }) => [yNm / foot, lengthNm / foot, locks])).toEqual([
      [0, 9, 4],
      [9, 4, 2],
    ]);
    expect(both.taken.map(({ component, count }) => [component, count])).toEqual([
      ['LK', 4],
      ['LK', 2],
    ]);
    expect(both.findings).toEqual([]);
  });

  test('6 1/2 in apart they take adjustable locks, a nanometre more is a stop that names the closure', () => {
    const maximum = 6.5 * inch;
    const filled = meetingJoints(high, high, maximum, system.rules);
    expect(filled.taken).toEqual([
      { component: 'AL', rule: 'fillerLocks', count: 4, where: { xNm: 3 * foot, yNm: 0 } },
    ]);
    expect(filled.closure).toBeNull();
    const wide = meetingJoints(high, high, maximum + 1, system.rules);
    expect(wide.taken).toEqual([]);
    expect(wide.closure).toMatchObject({ widthNm: maximum + 1, heightNm: 9 * foot, hours: null });
    expect(wide.findings).toMatchObject([
      { rule: 'closure', severity: 'stop', where: { xNm: 3 * foot, yNm: 0 } },
    ]);
    expect(wide.findings[0]?.message).toContain('made-up closure');
  });

  test('a filler at the edge of a gang is spanned with the gap beside it', () => {
    const filler = { fillers: [{ x: '3 ft', y: 0, width: '4 in', height: '9 ft' }] };
    const ending = of([['P3x9', 0, 0]], filler);
    expect(meetingJoints(ending, high, 0, system.rules).joints).toEqual([
      { kind: 'filler', xNm: 3 * foot, yNm: 0, lengthNm: 9 * foot, locks: 4 },
    ]);
    expect(meetingJoints(ending, high, 3 * inch, system.rules).findings).toMatchObject([{ rule: 'closure' }]);
  });

  test('a stretch too short to lock is a caution there, and a joint longer than the table another', () => {
    const low = of([['P3x4', 0, '-3 ft 11 in']]);
    const short: RuleTables = {
      ...system.rules,
      locks: { component: 'LK', bands: [{ upToNm: 5 * foot, count: 2 }], minimumStretchNm: 4.5 * foot },
    };
    expect(meetingJoints(low, high, 0, short).findings).toMatchObject([{ rule: 'locks.minimumStretch' }]);
    expect(meetingJoints(high, high, 0, short).findings).toMatchObject([{ rule: 'locks.bands' }]);
  });

  test('without a table of fillers nothing spans a gap', () => {
    const { fillerLocks: _, ...rules } = system.rules;
    expect(meetingJoints(high, high, 1, rules).closure?.widthNm).toBe(1);
  });
});

describe('made-up pieces', () => {
  test('2 ft by 9 ft are 18 sq ft; backing at most 2 ft apart stands 6 times; hours follow the area', () => {
    const made = madeUp(2 * foot, 9 * foot, { backing: 'TB', backingSpacingNm: 2 * foot, hoursPerM2: 1.5 });
    // 1 sq ft is 0.09290304 m2
    expect(Number(made.areaNm2) / 1e18).toBeCloseTo(18 * 0.092_903_04, 9);
    expect(made.backing).toEqual({ component: 'TB', count: 6 });
    expect(made.hours).toBeCloseTo(18 * 0.092_903_04 * 1.5, 9);
  });
});

describe('two random gangs drawn as one', () => {
  test('have the joints of the one, of the other and of the edge where they meet, and no other', () => {
    const seen = { vertical: 0, filler: 0, locks: 0 };
    for (let seed = 1; seed <= 500; seed++) {
      const dice = new Dice(seed);
      const made = withoutExtras(randomSystem(dice));
      const [one, other] = [
        flushAtFoot(made, randomDesign(dice, made)),
        flushAtFoot(made, randomDesign(dice, made)),
      ];
      const [left, right] = [taken(made, one), taken(made, other)];
      // Fillers of both gangs that touch at the edge are one to the pour and two to a drawing: only whole edges.
      if (hasFillerAt(left, 'right') || hasFillerAt(right, 'left')) continue;
      const gapNm = dice.of([0, 0, 20_000_000, 50_000_000]);
      const meeting = meetingJoints(left, right, gapNm, made.rules);
      const moved = shifted(other, left.widthNm + gapNm);
      const heightNm = Math.max(left.heightNm, right.heightNm);
      const between = gapNm === 0 ? [] : [{ xNm: left.widthNm, yNm: 0, widthNm: gapNm, heightNm }];
      const whole = taken(made, {
        ...one,
        panels: [...one.panels, ...moved.panels],
        fillers: [...one.fillers, ...moved.fillers, ...between],
      });
      const joints = [
        ...left.joints,
        ...right.joints.map((joint) => ({ ...joint, xNm: joint.xNm + left.widthNm + gapNm })),
        ...meeting.joints,
      ];
      expect(whole.joints.map(asText).toSorted(), `seed ${seed}`).toEqual(joints.map(asText).toSorted());
      for (const { kind, locks } of meeting.joints) {
        if (kind !== 'horizontal') seen[kind] += 1;
        seen.locks += locks;
      }
    }
    for (const [kind, count] of Object.entries(seen)) expect(count, kind).toBeGreaterThan(80);
  });
});

function hasFillerAt({ fillers, origin, widthNm }: TakeOff, side: 'left' | 'right'): boolean {
  return fillers.some((filler) =>
    side === 'left' ? filler.xNm === origin.xNm : filler.xNm + filler.widthNm === origin.xNm + widthNm,
  );
}

function asText({ kind, xNm, yNm, lengthNm, locks }: TakeOff['joints'][number]): string {
  return `${kind} ${xNm} ${yNm} ${lengthNm} takes ${locks}`;
}

function withoutExtras(made: PanelSystem): PanelSystem {
  const { locks } = made.rules;
  if (locks === undefined) throw new Error('these tests need a table of locks');
  const { extra: _, ...plain } = locks;
  return { ...made, rules: { ...made.rules, locks: plain } };
}

/** Its lower left corner at the origin. */
function flushAtFoot(made: PanelSystem, design: DesignGeometry): DesignGeometry {
  const { origin } = taken(made, design);
  return shifted(design, -origin.xNm, -origin.yNm);
}

function shifted(design: DesignGeometry, xNm: number, yNm = 0): DesignGeometry {
  const move = <T extends { xNm: number; yNm: number }>(piece: T): T => ({
    ...piece,
    xNm: piece.xNm + xNm,
    yNm: piece.yNm + yNm,
  });
  return { ...design, panels: design.panels.map(move), fillers: design.fillers.map(move) };
}
