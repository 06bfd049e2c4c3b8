// Hours of people and picks of an invented job of two weeks, against the two rows of its tables that a separate routine
// computed; and published sums of labour.
import { describe, expect, test } from 'vitest';
import { msOf } from '../../../core/plan/local-time.ts';
import type { LabourRate } from '../../../core/plan/planning-settings.ts';
import type { PourTimes } from '../../../core/plan/pour-times.ts';
import type { Job } from '../../../core/plan/pours.ts';
import type { Work } from '../../../core/plan/steps.ts';
import type { PourTurn } from '../../../core/plan/turns-from-pours.ts';
import { craneDays } from '../../../core/plan/work/crane-days.ts';
import { crewHoursByDate, type GangSizes, labourOf, ratedHours } from '../../../core/plan/work/labour.ts';
import { picksOf, straightOn } from '../../../core/plan/work/picks.ts';
import { pourTypes, twoWeeks } from '../fixtures/two-and-eight-weeks.ts';
import { job } from '../pours-for-tests.ts';
import { dateOf } from '../standing-input.ts';

/** Contact faces of the gangs in the scenario's table of make-ups, square feet. */
const faces: Readonly<Record<string, number>> = { GA: 144, GB: 96, GE: 96, CS: 96 };
/** The core's inner gangs are 10 by 10 ft with corners; its type has 1,056 sq ft in all: 4 x 144 + 4 x 120. */
const coreInner = 120;

const atOnce = (at: number): number => at;
const ft2 = 92_903_040_000_000_000n;
const basin: Job = { ...job, crew: 6, shifts: { ...job.shifts, start: '07:00', end: '15:00' } };

const at = (day: number, time: string): number =>
  msOf(`${dateOf(day)}T${time}:00${day > 5 ? '-04:00' : '-05:00'}`);

interface Made {
  readonly turns: readonly PourTurn[];
  readonly work: readonly Work[];
  readonly times: ReadonlyMap<string, PourTimes>;
}

/** All of a pour is set on its first set day and stripped on its strip day. */
function made(): Made {
  const turns: PourTurn[] = [];
  const work: Work[] = [];
  const times = new Map<string, PourTimes>();
  for (const [pour, type, setDay, stripDay] of twoWeeks) {
    const designs = Object.entries(pourTypes[type]?.gangs ?? {}).flatMap(([design, count]) =>
      Array.from({ length: count }, () => (type === 'K' && design === 'GB' ? 'GK' : design)),
    );
    const [from, to] = [at(setDay, '07:00'), at(stripDay, '15:00')];
    const own = designs.map((design, index): PourTurn => ({
      id: `${pour}/A${index + 1}`,
      pour,
      side: 'A',
      design,
      from,
      to,
    }));
    turns.push(...own);
    const stripFrom = at(stripDay, '13:00');
    const of = (kind: Work['kind'], start: number, end: number): Work => ({
      kind,
      from: start,
      to: end,
      pour,
      toPour: null,
      designs,
      turns: own.map(({ id }) => id),
    });
    work.push(of('set', from, at(setDay, '11:00')), of('strip', stripFrom, to));
    times.set(pour, {
      pour,
      sides: [],
      finish: at(setDay + 1, '13:00'),
      ready: stripFrom,
      stripFrom,
      stripTo: to,
      free: to,
    });
  }
  return { turns, work, times };
}

const sizes: GangSizes = {
  areaNm2: (design) => BigInt(design === 'GK' ? coreInner : (faces[design] ?? 0)) * ft2,
  pieces: () => ({}),
  designOf: () => '',
};

const rate = (
  step: LabourRate['step'],
  personHours: number,
  unit: LabourRate['unit'] = 'h/ft2',
): LabourRate => ({
  step,
  unit,
  personHours,
  owner: 'test',
  source: null,
});

describe('the two-week case', () => {
  const { turns, work, times } = made();
  const days = Array.from({ length: 10 }, (_, index) => index + 1);

  test('form hours at 0.035 h to set and 0.025 h to strip and clean a sq ft are 20.2 20.2 21.1 31.2 31.7 18.7 39.4 41.8 14.4 0', () => {
    const hours = crewHoursByDate(labourOf(work, basin, [rate('set', 0.035), rate('strip', 0.025)], sizes));
    const row = days.map((day) => Math.round((hours.get(dateOf(day)) ?? 0) * 10) / 10);
    expect(row).toEqual([20.2, 20.2, 21.1, 31.2, 31.7, 18.7, 39.4, 41.8, 14.4, 0]);
    // Six people for eight hours.
    expect(Math.max(...row)).toBeLessThan(48);
  });

  test('picks of single gangs are 4 4 6 8 8 6 10 10 4 0, at 12 minutes never over 120', () => {
    const picks = picksOf({
      timeZone: basin.timeZone,
      turns,
      loose: [],
      times,
      straight: new Map(),
      begun: atOnce,
    });
    const dates = days.map(dateOf);
    const cranes = craneDays(picks, dates, {
      hours: [
        { crane: 'T', days: [1, 2, 3, 4, 5], start: '07:00', end: '08:00', minutesPerPick: 12 },
        { crane: 'T', days: [1, 2, 3, 4, 5], start: '08:00', end: '09:00', minutesPerPick: 12 },
        { crane: 'T', days: [1, 2, 3, 4, 5], start: '14:00', end: '15:00', minutesPerPick: 12 },
      ],
      bookings: [],
      shifts: basin.shifts,
      craneOf: () => null,
    });
    expect(cranes.map(({ picks: laid }) => laid.length)).toEqual([4, 4, 6, 8, 8, 6, 10, 10, 4, 0]);
    expect(Math.max(...cranes.map(({ minutesNeeded }) => minutesNeeded))).toBe(120);
    // An hour from 14:00 on holds five picks: of the six gangs of W4 stripped on day 7 one is left hanging.
    expect(cranes.map(({ minutesOver }) => minutesOver)).toEqual(days.map((day) => (day === 7 ? 12 : 0)));
  });
});

const one = (areaFt2: bigint): GangSizes => ({ ...sizes, areaNm2: () => areaFt2 * ft2 });

describe('labour by rates', () => {
  const strip: Pick<Work, 'kind' | 'designs' | 'turns'> = { kind: 'strip', designs: ['X'], turns: ['X/A1'] };

  test('2,222 sq ft at 0.28 h are 622 h, and 500 sq ft stripped at 0.020 h are 10 h', () => {
    // Estimating in Building Construction, example 10-17: 303'-0" x 3'-8" x 2 = 2,222 SFCA, x 0.28 h = 622 h.
    expect(Math.round((303 * 44 * 2) / 12)).toBe(2222);
    expect(Math.round(ratedHours(rate('set', 0.28), strip, one(2222n)))).toBe(622);
    // A home improvement estimating handbook (2018), p. 44: walls to 12 ft stripped, cleaned, stacked at .020 h per SFCA.
    expect(ratedHours(rate('strip', 0.02), strip, one(500n))).toBeCloseTo(10, 9);
  });

  test('a square metre, a gang and a piece', () => {
    const gang: GangSizes = { ...one(0n), areaNm2: () => 12n * 10n ** 18n, pieces: () => ({ P: 8, LK: 23 }) };
    expect(ratedHours(rate('assemble', 0.5, 'h/m2'), { ...strip, designs: ['X', 'X'] }, gang)).toBeCloseTo(
      12,
      9,
    );
    expect(ratedHours(rate('assemble', 3, 'h/gang'), { ...strip, designs: ['X', 'X'] }, gang)).toBe(6);
    expect(ratedHours(rate('assemble', 0.1, 'h/piece'), strip, gang)).toBeCloseTo(3.1, 9);
  });

  test('a re-gang by the piece counts those put in and taken out: 2 panels and 7 locks of two gangs', () => {
    const pieces: Readonly<Record<string, Readonly<Record<string, number>>>> = {
      GA: { P: 4, LK: 23 },
      GB: { P: 2, LK: 16 },
    };
    const gangs: GangSizes = {
      areaNm2: () => 0n,
      pieces: (design) => pieces[design] ?? {},
      designOf: (turn) => (turn === 'W1/A1' ? 'GA' : 'GB'),
    };
    const regang = { kind: 'regang' as const, designs: ['GB'], turns: ['W1/A1', 'W2/A1'] };
    expect(ratedHours(rate('regang', 0.5, 'h/piece'), regang, gangs)).toBe(4.5);
  });

  test('without a rate the entered hours by the whole crew, spread over the shifts they take: 12 h are 6 x 8 and 6 x 4', () => {
    const long: Work = {
      ...strip,
      kind: 'assemble',
      from: at(1, '07:00'),
      to: at(2, '11:00'),
      pour: 'W1',
      toPour: null,
    };
    expect(labourOf([long], basin, [], sizes).map(({ personHours, rate: of }) => [personHours, of])).toEqual([
      [48, null],
      [24, null],
    ]);
    const rated = labourOf([long], basin, [rate('assemble', 30, 'h/gang')], sizes);
    expect(rated.map(({ personHours, rate: of }) => [personHours, of?.owner])).toEqual([
      [20, 'test'],
      [10, 'test'],
    ]);
  });

  test('a rate of cleaning is a step of its own on the day of the strip and is never added to the strip', () => {
    const own: Work = { ...strip, from: at(1, '13:00'), to: at(1, '15:00'), pour: 'W1', toPour: null };
    const found = labourOf([own], basin, [rate('clean', 2, 'h/gang')], sizes);
    expect(found.map(({ step, personHours }) => [step, personHours])).toEqual([
      ['strip', 12],
      ['clean', 2],
    ]);
  });
});

const turn = (id: string, from: number, to: number): PourTurn => ({
  id,
  pour: id.slice(0, 2),
  side: 'A',
  design: 'GA',
  from,
  to,
});

describe('a gang from wall to wall', () => {
  const turns = [
    turn('W1/A1', at(1, '07:00'), at(3, '10:00')),
    turn('W2/A1', at(3, '12:00'), at(4, '10:00')),
  ];
  const flown = new Map([['W1/A1', 'W2/A1']]);
  const zone = basin.timeZone;
  const kinds = (laidDown: boolean, of = turns): string[] =>
    picksOf({
      timeZone: zone,
      turns: of,
      loose: [],
      times: new Map(),
      straight: straightOn(of, flown, () => laidDown, zone),
      begun: atOnce,
    }).map(({ kind }) => kind);

  test('flown straight on is one pick, laid down is two', () => {
    expect(kinds(false)).toEqual(['set', 'fly-on', 'strip']);
    expect(kinds(true)).toEqual(['set', 'strip', 'set', 'strip']);
  });

  test('a night between lays it down', () => {
    const later = [...turns.slice(0, 1), turn('W2/A1', at(4, '07:00'), at(5, '10:00'))];
    expect(kinds(false, later)).toEqual(['set', 'strip', 'set', 'strip']);
  });

  test('loose pieces are a load for every moment at which they are needed, and one with the strip', () => {
    const loose = ['07:00', '07:00', '10:30'].map((time, index) => ({
      id: `W1/loose-${index}`,
      pour: 'W1',
      component: 'LK',
      quantity: 4,
      purpose: '',
      counted: false,
      from: at(1, time),
      to: at(3, '10:00'),
    }));
    const picks = picksOf({
      timeZone: zone,
      turns: [],
      loose,
      times: new Map(),
      straight: new Map(),
      begun: atOnce,
    });
    expect(picks.map(({ kind }) => kind)).toEqual(['set-loose', 'set-loose', 'strip-loose']);
  });
});
