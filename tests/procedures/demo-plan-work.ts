// Crew, crane and pads on the demo job: what is set is read back, what is too much is named with a change that clears it,
// and everything that was entered is taken out again.
import { expect } from 'vitest';
import type { PlanChange } from '../../core/plan/plan-changes.ts';
import { firstPlanningSettings, type PlanningSettings } from '../../core/plan/planning-settings.ts';
import { job, type DemoHost } from './demo-host.ts';

const weekdays = [1, 2, 3, 4, 5];

export async function askOfCalendar({ ask, refused }: DemoHost): Promise<void> {
  const before = await ask('board.read', { job });
  const weather = { kind: 'off', date: '2026-03-04', reason: 'weather', remark: null } as const;
  const { id } = await ask('calendar.set', { commandId: 'demo-calendar-1', job, exception: weather });
  const saturday = {
    kind: 'extra',
    date: '2026-03-07',
    start: '07:00',
    end: '12:00',
    reason: 'saturday',
    remark: null,
  } as const;
  const extra = await ask('calendar.set', { commandId: 'demo-calendar-2', job, exception: saturday });
  const { exceptions } = await ask('calendar.list', { job });
  expect(exceptions.map(({ exception, who }) => [exception, who])).toEqual([
    [weather, 'tester'],
    [saturday, 'tester'],
  ]);
  const board = await ask('board.read', { job });
  const dayOf = (date: string) => board.days.find((day) => day.date === date);
  expect([dayOf('2026-03-04')?.working, dayOf('2026-03-04')?.crewHoursThere]).toEqual([false, 0]);
  // Five hours of five people.
  expect([dayOf('2026-03-07')?.working, dayOf('2026-03-07')?.crewHoursThere]).toEqual([true, 25]);
  // A working day on from Friday 6 March is that Saturday.
  const moved = await ask('pour.move', {
    commandId: 'demo-calendar-3',
    job,
    moves: [{ pour: 'P04', workingDays: 1 }],
  });
  expect(moved.pours[0]?.finishAt.slice(0, 10)).toBe('2026-03-07');
  for (const [index, pour] of moved.before.entries())
    await ask('pour.save', { commandId: `demo-calendar-back-${index}`, job, pour });
  const none = { ...saturday, end: '07:00' };
  expect(await refused('calendar.set', { commandId: 'demo-calendar-4', job, exception: none })).toBe(
    'no-hours',
  );
  await ask('calendar.remove', { commandId: 'demo-calendar-5', job, id });
  await ask('calendar.remove', { commandId: 'demo-calendar-6', job, id: extra.id });
  expect(await refused('calendar.remove', { commandId: 'demo-calendar-7', job, id })).toBe(
    'unknown-exception',
  );
  expect((await ask('board.read', { job })).cost).toEqual(before.cost);
}

const settings: PlanningSettings = {
  ...firstPlanningSettings,
  laidDown: true,
  labourRates: [{ step: 'set', unit: 'h/ft2', personHours: 0.035, owner: 'tester', source: null }],
  cranes: [{ crane: 'TC1', days: weekdays, start: '07:00', end: '11:30', minutesPerPick: 12 }],
  pads: [{ code: 'N', name: 'North pad', use: 'both', places: 40, reach: null }],
};

export async function askOfWork(host: DemoHost): Promise<void> {
  const { ask, refused } = host;
  const kept = await ask('planning.read', { job });
  const twice = { ...settings, labourRates: [...settings.labourRates, ...settings.labourRates] };
  expect(await refused('planning.save', { commandId: 'demo-planning-1', job, settings: twice })).toBe(
    'rate-twice',
  );
  await ask('planning.save', { commandId: 'demo-planning-2', job, settings });
  const read = await ask('planning.read', { job });
  expect([read.entered, read.settings]).toEqual([true, settings]);
  const work = await ask('work.read', { job });
  const second = work.days.find(({ date }) => date === '2026-03-03');
  // Four gangs GA of 144 sq ft are set on Tuesday: 576 x 0.035 = 20.16 h, as in the invented scenario.
  const set = second?.crew.steps.filter(({ step, pour }) => step === 'set' && pour === 'P02') ?? [];
  expect(set.reduce((sum, { personHours }) => sum + personHours, 0)).toBeCloseTo(20.16, 6);
  expect(set.map(({ rate }) => rate?.owner)).toEqual(set.map(() => 'tester'));
  const picks = second?.cranes[0]?.picks.filter(({ pour, kind }) => pour === 'P02' && kind === 'set') ?? [];
  expect(picks.map(({ at }) => at?.slice(11, 16))).toEqual(['07:00', '07:12', '10:30', '10:42']);
  const { overloads, notReckoned } = await ask('overload.list', { job });
  expect(notReckoned).toEqual([]);
  expect(overloads).toEqual(work.overloads);
  const board = await ask('board.read', { job });
  expect(board.days.flatMap((day) => day.overloads)).toEqual(overloads.map(({ id }) => id));
  const strips = overloads.filter(({ kind }) => kind === 'crane');
  // Strips begin at 13:00, after the crane's hours: there are overloads to look at.
  expect(strips.length).toBeGreaterThan(3);
  const [first] = strips;
  if (first === undefined) throw new Error('No overload of the crane.');
  const cleared = await ask('overload.clear', { job, overload: first.id });
  expect(cleared.overload).toEqual(first);
  expect(cleared.tried).toBeGreaterThan(3);
  await carryOutAndBack(host, first.id, cleared.ways);
  expect(await refused('overload.clear', { job, overload: 'crew@1999-01-01' })).toBe('unknown-overload');
  await askOfBookings(host);
  await ask('planning.save', { commandId: 'demo-planning-3', job, settings: kept.settings });
}

interface Way {
  readonly change: PlanChange;
  readonly costChangeCents: number;
}

/** Every way offered, when carried out, clears the overload and costs what it said. */
async function carryOutAndBack({ ask }: DemoHost, id: string, ways: readonly Way[]): Promise<void> {
  const before = await ask('board.read', { job });
  for (const [index, way] of ways.entries()) {
    const commandId = `demo-clear-${id}-${index}`.slice(0, 60);
    const { applied } = await ask('plan.apply', {
      commandId,
      job,
      changes: [way.change],
      about: `clear ${id}`,
    });
    const after = await ask('board.read', { job });
    expect(after.days.flatMap((day) => day.overloads)).not.toContain(id);
    expect(after.cost.totalCents - before.cost.totalCents).toBe(way.costChangeCents);
    await ask('plan.takeback', { commandId: `back-${commandId}`.slice(0, 60), job, applied });
  }
  expect(ways.length).toBeGreaterThan(0);
}

async function askOfBookings({ ask, refused }: DemoHost): Promise<void> {
  const from = '2026-03-03T07:00:00-05:00';
  const booking = {
    crane: 'TC1',
    from,
    to: '2026-03-03T11:00:00-05:00',
    kind: 'other-trade',
    who: 'steel crew',
    about: '',
  } as const;
  const { id } = await ask('crane.book', { commandId: 'demo-crane-1', job, booking });
  expect((await ask('crane.bookings', { job })).bookings).toEqual([{ id, booking }]);
  const day = (await ask('board.read', { job })).days.find(({ date }) => date === '2026-03-03');
  expect([day?.craneMinutesThere, day?.overloads.includes('crane:TC1@2026-03-03')]).toEqual([30, true]);
  expect(
    await refused('crane.book', { commandId: 'demo-crane-2', job, booking: { ...booking, to: from } }),
  ).toBe('booking-without-hours');
  await ask('crane.unbook', { commandId: 'demo-crane-3', job, id });
  expect(await refused('crane.unbook', { commandId: 'demo-crane-4', job, id })).toBe('unknown-booking');
}

export async function askOfPourFacts({ ask, refused }: DemoHost): Promise<void> {
  const [pour, now] = ['P01', '2026-03-04T09:00:00-05:00'];
  const before = await ask('pour.facts', { job, pour });
  const board = await ask('board.read', { job });
  const hold = {
    reason: 'cube test failed',
    who: 'the laboratory',
    since: now,
    until: '2026-03-09T08:00:00-04:00',
  };
  await ask('pour.facts.save', { commandId: 'demo-facts-1', job, pour, facts: { hold } });
  const held = await ask('board.read', { job });
  const row = held.pours.find((each) => each.pour.code === pour);
  expect(row?.times.stripFrom).toBe('2026-03-09T08:00:00-04:00');
  expect(row?.findings.map(({ rule }) => rule)).toContain('on-hold');
  expect(held.turns.filter((turn) => turn.pour === pour).map(({ to }) => to.slice(0, 10))).toEqual(
    Array.from({ length: 4 }, () => '2026-03-09'),
  );
  const onItself = { standsOn: { pour: 'P02', strengthH: 48 } };
  await ask('pour.facts.save', { commandId: 'demo-facts-2', job, pour, facts: { hold: null, ...onItself } });
  const found = (await ask('pour.facts', { job, pour })).findings.map(({ rule }) => rule);
  expect(found).toEqual(expect.arrayContaining(['stands-on', 'stands-on-brackets']));
  const circle = { commandId: 'demo-facts-3', job, pour: 'P02', facts: { standsOn: { pour, strengthH: 1 } } };
  expect(await refused('pour.facts.save', circle)).toBe('stands-on-itself');
  const { hold: held0, reach, standsOn, laidDown } = before.facts;
  await ask('pour.facts.save', {
    commandId: 'demo-facts-4',
    job,
    pour,
    facts: { hold: held0, reach, standsOn, laidDown },
  });
  expect((await ask('board.read', { job })).cost).toEqual(board.cost);
}
