// Changes of a plan carried out and taken back: the plan is the one that was shown before, and afterwards every row is as
// it was.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PlanChange } from '../../core/plan/plan-changes.ts';
import { rawHandle } from '../book/a-book.ts';
import { numbersFrom } from '../bench/jobs.ts';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;

beforeAll(async () => {
  host = await demoHost();
});

afterAll(() => host.close());

const newId = (): string => `carry-out-${(commands += 1)}`;

/** What a change may touch, without what only says who wrote it and how often. */
async function rows(): Promise<unknown> {
  const handle = await rawHandle(host.file, { readonly: true });
  const of = (sql: string): unknown => handle.prepare(sql).all();
  const all = {
    pours: of('SELECT * FROM pour ORDER BY job, position'),
    sides: of('SELECT * FROM pour_side ORDER BY job, pour, side'),
    gangs: of('SELECT * FROM placed_gang ORDER BY job, pour, side, position'),
    gates: of('SELECT * FROM gate ORDER BY job, pour, position'),
    loose: of('SELECT * FROM loose_line ORDER BY job, pour, position'),
    after: of('SELECT * FROM pour_after ORDER BY job, pour, position'),
    entries: of(
      "SELECT job, kind, id, entry FROM job_entry WHERE kind <> 'applied-change' ORDER BY kind, id",
    ),
    // The same text may be written in another order.
    notes: handle
      .prepare<[], { note: string }>('SELECT id, state, expected_at, note FROM yard_note ORDER BY id')
      .all()
      .map((row): unknown => ({ ...row, note: JSON.parse(row.note) })),
  };
  handle.close();
  return all;
}

async function planned(): Promise<unknown> {
  const { turns, shortfalls, cost } = await host.ask('board.read', { job });
  return { turns, shortfalls, cost };
}

/** Carries out, looks whether the plan is the one that was asked about, takes back, and compares every row. */
async function thereAndBack(changes: PlanChange[]): Promise<void> {
  const [before, planBefore] = [await rows(), await planned()];
  const asked = await host.ask('plan.whatif', { job, changes });
  const { applied } = await host.ask('plan.apply', { commandId: newId(), job, changes, about: 'a try' });
  const { shortfalls, cost } = await host.ask('board.read', { job });
  expect(cost).toEqual(asked.after.cost);
  expect(shortfalls).toEqual(asked.after.shortfalls);
  expect(await rows()).not.toEqual(before);
  await host.ask('plan.takeback', { commandId: newId(), job, applied });
  expect(await rows()).toEqual(before);
  expect(await planned()).toEqual(planBefore);
}

const day = (date: string, hour = '09:00'): string => `${date}T${hour}:00-04:00`;

async function everyKind(): Promise<ReadonlyMap<PlanChange['kind'], PlanChange>> {
  const { turns } = await host.ask('board.read', { job });
  const follow = turns.find(({ after }) => after.how === 'fly-on');
  const gang = turns.find(({ pour }) => pour === 'P05');
  const designs = await host.ask('design.list', {});
  const other = designs.designs.find(({ code }) => code !== gang?.design)?.code ?? '';
  const { notes } = await host.ask('note.list', {});
  const draft = notes.find(({ state, kind }) => state === 'draft' && kind === 'delivery');
  const kinds: PlanChange[] = [
    { kind: 'move', pour: 'P05', workingDays: 2 },
    { kind: 'drop', pour: 'P06' },
    {
      kind: 'stock',
      entry: {
        kind: 'hire',
        component: 'LK',
        quantity: 60,
        from: day('2026-03-09'),
        to: day('2026-03-20'),
        costCents: 1200,
        source: 'H1',
        remark: null,
      },
    },
    { kind: 'set-of-forms', gangs: [{ design: 'GA', quantity: 2 }], from: day('2026-03-09') },
    { kind: 'delivery', note: draft?.id ?? '', expectedAt: day('2026-03-18') },
    { kind: 'fix', choice: { kind: 'break-down', turn: follow?.id ?? '' } },
    { kind: 'strip', pour: 'P04', stripMinimumH: 40, approvedBy: 'the engineer' },
    { kind: 'design', pour: 'P05', side: 'A', position: 1, design: other },
    {
      kind: 'calendar',
      exception: { kind: 'off', date: '2026-03-11', reason: 'weather', remark: null },
    },
    { kind: 'date', pour: 'P07', finishAt: day('2026-03-19', '12:00') },
    {
      kind: 'hold',
      pour: 'P03',
      hold: { reason: 'cylinder test failed', who: 'the inspector', until: day('2026-03-20') },
    },
  ];
  return new Map(kinds.map((change) => [change.kind, change]));
}

const kinds: readonly PlanChange['kind'][] = [
  'move',
  'drop',
  'stock',
  'set-of-forms',
  'delivery',
  'fix',
  'strip',
  'design',
  'calendar',
  'date',
  'hold',
];

describe('A change carried out', () => {
  test.each(kinds)('%s: gives the plan that was shown, and taken back leaves no trace', async (kind) => {
    const change = (await everyKind()).get(kind);
    if (change === undefined) throw new Error(`No change of kind ${kind}`);
    await thereAndBack([change]);
  });

  test('a fixed choice is unfixed and comes back as it was', async () => {
    const fix = (await everyKind()).get('fix');
    if (fix?.kind !== 'fix') throw new Error('No choice to fix');
    await host.ask('plan.apply', { commandId: newId(), job, changes: [fix], about: 'fixed' });
    await thereAndBack([{ kind: 'unfix', choice: fix.choice }]);
  });

  test('several at once are all carried out or, where one is refused, none', async () => {
    const all = await everyKind();
    const some = (['move', 'stock', 'calendar'] as const).flatMap((kind) => all.get(kind) ?? []);
    await thereAndBack(some);
    const before = await rows();
    const code = await host.refused('plan.apply', {
      commandId: newId(),
      job,
      changes: [...some, { kind: 'move', pour: 'NOWHERE', workingDays: 1 }],
      about: 'with one pour too many',
    });
    expect(code).toBe('unknown-pour');
    expect(await rows()).toEqual(before);
  });
});

function move(workingDays: number): PlanChange[] {
  return [{ kind: 'move', pour: 'P08', workingDays }];
}

function back(applied: string) {
  return { commandId: newId(), job, applied };
}

describe('Taking back', () => {
  test('is done once, and not while a later change of the same pour stands', async () => {
    const apply = (changes: PlanChange[]) =>
      host.ask('plan.apply', { commandId: newId(), job, changes, about: 'P08 later' });
    const before = await rows();
    const [first, second] = [await apply(move(1)), await apply(move(2))];
    expect(await host.refused('plan.takeback', back(first.applied))).toBe('changed-since');
    await host.ask('plan.takeback', back(second.applied));
    await host.ask('plan.takeback', back(first.applied));
    expect(await host.refused('plan.takeback', back(first.applied))).toBe('taken-back-already');
    expect(await host.refused('plan.takeback', back('nothing'))).toBe('unknown-change');
    expect(await rows()).toEqual(before);
    const { changes } = await host.ask('change.list', { job });
    const [newest, older] = changes;
    expect([newest?.applied, older?.applied]).toEqual([second.applied, first.applied]);
    expect([newest?.takenBackAt, older?.takenBackAt]).not.toContain(null);
  });

  test('what changes nothing is refused', async () => {
    expect(
      await host.refused('plan.apply', { commandId: newId(), job, changes: move(0), about: 'nothing' }),
    ).toBe('changes-nothing');
  });

  test('40 random changes one on another, taken back in their order, leave every row as it was', async () => {
    const next = numbersFrom(11);
    const before = await rows();
    const applied: string[] = [];
    const all = [...(await everyKind()).values()].filter(({ kind }) => kind !== 'drop' && kind !== 'fix');
    for (let round = 0; round < 40; round += 1) {
      const pour = `P${String(1 + Math.floor(next() * 20)).padStart(2, '0')}`;
      const changes: PlanChange[] =
        next() < 0.5
          ? [{ kind: 'move', pour, workingDays: Math.floor(next() * 5) - 2 }]
          : [all[Math.floor(next() * all.length)] ?? { kind: 'drop', pour }];
      const asked = { commandId: newId(), job, changes, about: `round ${round}` };
      // A pour may end up before what it comes after: that is refused, and nothing is done.
      const answered = await host.ask('plan.apply', asked).catch(() => null);
      if (answered !== null) applied.push(answered.applied);
    }
    expect(applied.length).toBeGreaterThan(20);
    for (const each of applied.reverse())
      await host.ask('plan.takeback', { commandId: newId(), job, applied: each });
    expect(await rows()).toEqual(before);
  });
});
