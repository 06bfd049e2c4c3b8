// What changes would do, and two plans held against each other, on the demo job: every figure against the board's own.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PlanChange } from '../../core/plan/plan-changes.ts';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const newId = (): string => `what-if-${(commands += 1)}`;
const later = (pour: string, workingDays: number): PlanChange => ({ kind: 'move', pour, workingDays });

beforeAll(async () => {
  host = await demoHost();
});

afterAll(() => host.close());

async function whatif(...changes: PlanChange[]) {
  return host.ask('plan.whatif', { job, changes });
}

describe('A what-if', () => {
  test('needs a move or a change', async () => {
    expect(await host.refused('plan.whatif', { job })).toBe('no-change');
  });

  test('says the same of a move, whether it is given as one or as a change', async () => {
    const asMove = await host.ask('plan.whatif', { job, moves: [{ pour: 'P08', workingDays: 1 }] });
    expect(await whatif(later('P08', 1))).toEqual(asMove);
    expect(asMove.moves.map(({ pour, workingDays }) => [pour, workingDays])).toEqual([['P08', 1]]);
  });

  test('takes its figures from the board as it is, and crew hours after are those of the plan after', async () => {
    const board = await host.ask('board.read', { job });
    const asked = await whatif(later('P08', 1));
    expect(asked.before.cost).toEqual(board.cost);
    expect(asked.before.shortfalls).toEqual(board.shortfalls);
    expect(asked.before.gangs).toBe(new Set(board.turns.map(({ run }) => run)).size);
    const { applied } = await host.ask('plan.apply', {
      commandId: newId(),
      job,
      changes: asked.changes,
      about: 'P08 a day later',
    });
    const after = await host.ask('board.read', { job });
    await host.ask('plan.takeback', { commandId: newId(), job, applied });
    expect(asked.days.length).toBeGreaterThan(1);
    for (const { date, before: was, after: is } of asked.days) {
      const hoursOn = (days: typeof board.days): number =>
        days.find((each) => each.date === date)?.crewHoursNeeded ?? 0;
      expect(was?.crewHoursNeeded ?? 0).toBeCloseTo(hoursOn(board.days), 2);
      expect(is?.crewHoursNeeded ?? 0).toBeCloseTo(hoursOn(after.days), 2);
    }
    const listed = new Set(asked.days.map(({ date }) => date));
    for (const day of board.days.filter(({ date }) => !listed.has(date)))
      expect(after.days.find(({ date }) => date === day.date)?.crewHoursNeeded ?? 0).toBeCloseTo(
        day.crewHoursNeeded,
        2,
      );
  });

  test('names the pour with its times and the shift in which its pieces are free: of a dropped one nothing is left', async () => {
    const [moved] = (await whatif(later('P08', 1))).pours;
    expect(moved?.pour).toBe('P08');
    const { before, after } = moved ?? {};
    expect(Date.parse(after?.finishAt ?? '')).toBeGreaterThan(Date.parse(before?.finishAt ?? ''));
    // The demo's shifts are 07:00 to 15:30.
    expect(after?.freeShift.slice(11, 16)).toMatch(/^(07|08|09|1[0-4]):\d\d$|^15:[0-2]\d$/u);
    expect(Date.parse(after?.freeShift ?? '')).toBeGreaterThanOrEqual(Date.parse(after?.freeAt ?? ''));
    const dropped = await whatif({ kind: 'drop', pour: 'P08' });
    expect(dropped.pours).toMatchObject([{ pour: 'P08', after: null }]);
    expect(dropped.after.pours).toBe(dropped.before.pours - 1);
  });

  test('nothing else moves: the only pour at other times is the one that was moved', async () => {
    const asked = await whatif(later('P05', 1));
    expect(asked.pours.map(({ pour }) => pour)).toEqual(['P05']);
  });

  test('counts what planned pieces cost beside the plan, and says whom to call about them', async () => {
    const asked = await whatif({
      kind: 'stock',
      entry: {
        kind: 'hire',
        component: 'LK',
        quantity: 60,
        from: '2026-03-09T07:00:00-04:00',
        to: null,
        costCents: 1200,
        source: 'H1',
        remark: null,
      },
    });
    expect(asked.after.plannedCents - asked.before.plannedCents).toBe(1200);
    expect(asked.allChangeCents).toBe(asked.costChangeCents + 1200);
    expect(asked.after.allCents).toBe(asked.after.cost.totalCents + asked.after.plannedCents);
    expect(asked.call).toMatchObject([{ who: 'H1', about: '60 LK', pour: null, promised: '2026-03-09' }]);
  });

  test('has the phone number of everybody to call of whom the job has one, however the name is written', async () => {
    const { settings } = await host.ask('planning.read', { job });
    const calls = (await whatif(later('P08', 1))).call;
    const [first, ...others] = [...new Set(calls.map(({ who }) => who))];
    expect(others.length).toBeGreaterThan(1);
    const phones = [{ who: ` ${first?.toUpperCase()}`, phone: '555-0101' }];
    await host.ask('planning.save', { commandId: newId(), job, settings: { ...settings, phones } });
    for (const { who, phone } of (await whatif(later('P08', 1))).call)
      expect(phone).toBe(who === first ? '555-0101' : null);
    await host.ask('planning.save', { commandId: newId(), job, settings });
  });

  test('a delivery that comes later is called about at whoever sends it', async () => {
    const { notes } = await host.ask('note.list', {});
    const note = notes.find(({ state, kind }) => state === 'draft' && kind === 'delivery');
    const asked = await whatif({ kind: 'delivery', note: note?.id ?? '', expectedAt: null });
    expect(asked.call).toHaveLength(1);
    expect(asked.call[0]?.about).toBe(`delivery ${note?.number}`);
  });

  test('a told instruction that would be changed is named with its gang; afterwards it is told again', async () => {
    const now = '2026-03-04T07:00:00-05:00';
    const { told } = await host.ask('told.mark', { commandId: newId(), job, now });
    const follow = told.find(({ kind }) => kind === 'follow');
    if (follow?.kind !== 'follow') throw new Error('Nothing that flies on was told');
    const asked = await whatif({ kind: 'fix', choice: { kind: 'break-down', turn: follow.from } });
    expect(asked.toldChanged.map((each) => each.instruction)).toContainEqual(follow);
    expect(asked.toldChanged[0]?.from?.design ?? asked.toldChanged[0]?.to?.design).toBeTruthy();
    expect(asked.after.changedTold).toBe(asked.before.changedTold + asked.toldChanged.length);
    expect(asked.after.cost.changeCents).toBeGreaterThan(asked.before.cost.changeCents);
    await host.ask('told.release', { commandId: newId(), job, instructions: told, now });
  });
});

function keep(name: string, changes: PlanChange[]) {
  return host.ask('whatif.keep', { commandId: newId(), job, name, changes });
}

describe('Kept what-ifs', () => {
  test('are listed newest first, change nothing of the plan, and are dropped', async () => {
    const before = await host.ask('board.read', { job });
    const first = await keep('P08 later', [later('P08', 1)]);
    const second = await keep('without P10', [{ kind: 'drop', pour: 'P10' }]);
    const { kept } = await host.ask('whatif.list', { job });
    expect(kept.map(({ id, name, who, whyNot }) => [id, name, who, whyNot])).toEqual([
      [second.id, 'without P10', 'tester', null],
      [first.id, 'P08 later', 'tester', null],
    ]);
    const again = { commandId: newId(), job, name: 'p08 LATER', changes: [later('P09', 1)] };
    expect(await host.refused('whatif.keep', again)).toBe('name-taken');
    const after = await host.ask('board.read', { job });
    expect([after.turns, after.cost]).toEqual([before.turns, before.cost]);
    for (const { id } of kept) await host.ask('whatif.drop', { commandId: newId(), job, id });
    expect((await host.ask('whatif.list', { job })).kept).toEqual([]);
    expect(await host.refused('whatif.drop', { commandId: newId(), job, id: first.id })).toBe(
      'unknown-what-if',
    );
  });

  test('one that speaks of a pour that is gone says so, and is not compared', async () => {
    const { id } = await keep('P08 later', [later('P08', 1)]);
    const { applied } = await host.ask('plan.apply', {
      commandId: newId(),
      job,
      changes: [{ kind: 'drop', pour: 'P08' }],
      about: 'without P08',
    });
    const { kept } = await host.ask('whatif.list', { job });
    expect(kept[0]?.whyNot).toContain('P08');
    expect(await host.refused('whatif.compare', { job, one: 'now', other: { kept: id } })).toBe(
      'unknown-pour',
    );
    await host.ask('plan.takeback', { commandId: newId(), job, applied });
    expect((await host.ask('whatif.list', { job })).kept[0]?.whyNot).toBeNull();
    await host.ask('whatif.drop', { commandId: newId(), job, id });
  });
});

describe('Two plans side by side', () => {
  test('as it stands against changes: the same as the what-if of them', async () => {
    const changes = [later('P08', 2)];
    const [compared, asked] = [
      await host.ask('whatif.compare', { job, one: 'now', other: { changes } }),
      await whatif(...changes),
    ];
    expect(compared.one.summary).toEqual(asked.before);
    expect(compared.other.summary).toEqual(asked.after);
    for (const key of ['newShortfalls', 'goneShortfalls', 'pours', 'days', 'rerouted', 'call'] as const)
      expect(compared[key]).toEqual(asked[key]);
  });

  test('changed about, every difference is turned round', async () => {
    const { id } = await host.ask('whatif.keep', {
      commandId: newId(),
      job,
      name: 'without P10',
      changes: [{ kind: 'drop', pour: 'P10' }],
    });
    const there = await host.ask('whatif.compare', { job, one: 'now', other: { kept: id } });
    const back = await host.ask('whatif.compare', { job, one: { kept: id }, other: 'now' });
    expect(there.other.name).toBe('without P10');
    expect(there.other.summary).toEqual(back.one.summary);
    expect(back.allChangeCents).toBe(-there.allChangeCents);
    expect(back.newShortfalls).toEqual(there.goneShortfalls);
    expect(back.components.map(({ one, other }) => [other, one])).toEqual(
      there.components.map(({ one, other }) => [one, other]),
    );
    expect(back.pours).toMatchObject([{ pour: 'P10', before: null }]);
    await host.ask('whatif.drop', { commandId: newId(), job, id });
  });

  test('a plan against itself differs in nothing', async () => {
    const same = await host.ask('whatif.compare', { job, one: 'now', other: 'now' });
    const { newShortfalls, changedShortfalls, pours, days, rerouted, toldChanged, allChangeCents } = same;
    expect([newShortfalls, changedShortfalls, pours, days, rerouted, toldChanged]).toEqual(
      Array.from({ length: 6 }, () => []),
    );
    expect(allChangeCents).toBe(0);
    expect(same.components.length).toBeGreaterThan(0);
    for (const { one, other } of same.components) expect(one).toBe(other);
  });

  test('what is not kept is not compared', async () => {
    expect(await host.refused('whatif.compare', { job, one: { kept: 'nothing' }, other: 'now' })).toBe(
      'unknown-what-if',
    );
  });
});
