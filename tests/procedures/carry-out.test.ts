// Changes of a plan carried out and taken back: the plan is the one that was shown before, and afterwards every row is as
// it was.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type PlanChange, planChange } from '../../core/plan/plan-changes.ts';
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

/** Every table of the book, without what only says who wrote a row and how often: that goes on by itself. */
async function rows(): Promise<unknown> {
  const handle = await rawHandle(host.file, { readonly: true });
  const of = (sql: string): readonly Record<string, unknown>[] =>
    handle.prepare<[], Record<string, unknown>>(sql).all();
  const names = of("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").map(({ name }) =>
    String(name),
  );
  expect(names).toContain('pour_after');
  const tables = names
    .filter((name) => name !== 'command' && !name.startsWith('sqlite_'))
    .map((name) => [name, tableRows(name, of(`SELECT * FROM "${name}"`))]);
  handle.close();
  return Object.fromEntries(tables);
}

function tableRows(table: string, all: readonly Record<string, unknown>[]): readonly string[] {
  return all
    .filter(({ kind }) => table !== 'job_entry' || kind !== 'applied-change')
    .map(({ command: _command, number, version, note, ...row }) =>
      JSON.stringify({
        ...row,
        ...(table === 'job_entry' ? {} : { number }),
        ...(table === 'yard_note' ? {} : { version }),
        // The same text may be written in another order.
        note: typeof note === 'string' ? sortedText(note) : note,
      }),
    )
    .sort();
}

function sortedText(text: string): unknown {
  const read: unknown = JSON.parse(text);
  return typeof read === 'object' && read !== null
    ? Object.fromEntries(Object.entries(read).sort(([a], [b]) => (a < b ? -1 : 1)))
    : read;
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
      kind: 'pour-times',
      pour: 'P07',
      sides: [{ side: 'B', setAt: day('2026-03-11', '07:00'), setH: 3 }],
      finishAt: day('2026-03-12', '13:00'),
    },
    {
      kind: 'crane',
      booking: {
        crane: 'TC1',
        from: day('2026-03-11', '07:00'),
        to: day('2026-03-11', '11:00'),
        kind: 'wind',
        who: 'the crane driver',
        about: 'gusts',
      },
    },
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
  'pour-times',
  'crane',
  'hold',
];

describe('A change carried out', () => {
  test.each(kinds)('%s: gives the plan that was shown, and taken back leaves no trace', async (kind) => {
    const change = (await everyKind()).get(kind);
    if (change === undefined) throw new Error(`No change of kind ${kind}`);
    await thereAndBack([change]);
  });

  test('every kind there is was carried out', () => {
    const all = planChange.options.map((option) => option.shape.kind.value);
    // What was fixed is let go of in a test of its own.
    expect([...kinds, 'unfix'].sort()).toEqual([...all].sort());
  });

  test('a dropped pour leaves its place to be come back to: those after it come after what it came after', async () => {
    const hold = (await everyKind()).get('hold');
    if (hold?.kind !== 'hold') throw new Error('No hold');
    // P05 and P07 come after P04, and P04 after P02.
    const changes: PlanChange[] = [
      { ...hold, pour: 'P04' },
      { kind: 'drop', pour: 'P04' },
    ];
    await thereAndBack([{ kind: 'drop', pour: 'P04' }]);
    const held = await host.ask('plan.apply', {
      commandId: newId(),
      job,
      changes: [{ ...hold, pour: 'P04' }],
      about: 'held',
    });
    await thereAndBack([{ kind: 'drop', pour: 'P04' }]);
    await host.ask('plan.takeback', back(held.applied));
    const { applied } = await host.ask('plan.apply', { commandId: newId(), job, changes, about: 'gone' });
    const { pours } = await host.ask('pour.list', { job });
    const afterOf = (code: string): unknown => pours.find(({ pour }) => pour.code === code)?.pour.after;
    expect([afterOf('P04'), afterOf('P05'), afterOf('P07')]).toEqual([undefined, ['P02'], ['P02']]);
    await host.ask('plan.takeback', back(applied));
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

  test('what somebody has entered since is named, and taken back again it goes', async () => {
    const delivery = (await everyKind()).get('delivery');
    if (delivery?.kind !== 'delivery') throw new Error('No delivery');
    const { applied } = await host.ask('plan.apply', {
      commandId: newId(),
      job,
      changes: [delivery],
      about: 'D-101 later',
    });
    const save = async (expectedAt: string): Promise<void> => {
      const { note: read } = await host.ask('note.read', { note: delivery.note });
      const { state: _state, countedThere: _countedThere, ...note } = read;
      await host.ask('note.save', { commandId: newId(), note: { ...note, expectedAt } });
    };
    await save(day('2026-03-17'));
    const refusal = await host.ask('plan.takeback', back(applied)).catch(String);
    expect(refusal).toContain('note D-101 changed since');
    await save(delivery.expectedAt ?? '');
    await host.ask('plan.takeback', back(applied));
  });

  test('a pour that is where a change left it, but by way of two others, is not taken back over them', async () => {
    const apply = (days: number) =>
      host.ask('plan.apply', { commandId: newId(), job, changes: move(days), about: `${days}` });
    const all = [await apply(1), await apply(1), await apply(-1)];
    const [first] = all;
    expect(await host.refused('plan.takeback', back(first?.applied ?? ''))).toBe('changed-since');
    for (const { applied } of all.reverse()) await host.ask('plan.takeback', back(applied));
  });

  test('60 random changes, one in three taken back in any order, leave every row as it was', async () => {
    const next = numbersFrom(11);
    const some = <T>(list: readonly T[]): T | undefined => list[Math.floor(next() * list.length)];
    const before = await rows();
    const all = [...(await everyKind()).values()];
    const standing: string[] = [];
    const said = new Map<string, number>();
    const count = (word: string): void => void said.set(word, (said.get(word) ?? 0) + 1);
    for (let round = 0; round < 60; round += 1) {
      const pour = `P0${1 + Math.floor(next() * 8)}`;
      const taken = next() < 1 / 3 ? some(standing) : undefined;
      if (taken !== undefined) {
        const refused = await host.refused('plan.takeback', back(taken)).catch(() => null);
        count(refused ?? 'taken back');
        if (refused === null) standing.splice(standing.indexOf(taken), 1);
        continue;
      }
      const change: PlanChange =
        next() < 0.5
          ? { kind: 'move', pour, workingDays: Math.floor(next() * 5) - 2 }
          : (some(all) ?? { kind: 'drop', pour });
      const input = { commandId: newId(), job, changes: [change], about: `round ${round}` };
      const answered = await host.ask('plan.apply', input).catch(() => null);
      count(answered === null ? 'refused' : 'applied');
      if (answered !== null) standing.push(answered.applied);
    }
    expect(said.get('applied')).toBeGreaterThan(20);
    expect(said.get('taken back')).toBeGreaterThan(4);
    expect(said.get('changed-since')).toBeGreaterThan(1);
    expect([...said.keys()].sort()).toEqual(['applied', 'changed-since', 'refused', 'taken back']);
    for (const each of standing.reverse()) await host.ask('plan.takeback', back(each));
    expect(await rows()).toEqual(before);
  });
});
