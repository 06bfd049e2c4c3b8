// Strip tickets on the demo job through the host: made from the plan, counted in parts, booked once, late finds. The
// gang GA is four panels of 8 ft and four of 4 ft with 26 locks, by the demo's own rule tables.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Condition } from '../../core/yard/movement.ts';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const id = (): string => `ticket-test-${(commands += 1)}`;

beforeAll(async () => {
  host = await demoHost();
});
afterAll(() => host.close());

const at = (day: number, hour = 15): string =>
  `2026-03-${String(day).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00-05:00`;

/** What the book holds by place and condition, of one component. */
async function held(component: string): Promise<Record<string, number>> {
  const { rows } = await host.ask('yard.quantities', { outside: true });
  const sums: Record<string, number> = {};
  for (const row of rows) {
    if (row.component !== component || row.locationKind === 'opening') continue;
    const key = `${row.location} ${row.condition}`;
    sums[key] = (sums[key] ?? 0) + row.quantity;
  }
  return sums;
}

async function sumHeld(component: string): Promise<number> {
  return Object.values(await held(component)).reduce((sum, quantity) => sum + quantity, 0);
}

function line(part: string, component: string, quantity: number, condition: Condition = 'to-clean') {
  return { part, component, quantity, condition };
}

async function enter(ticket: string, lines: ReturnType<typeof line>[], entry = id()) {
  return host.ask('ticket.enter', { commandId: id(), ticket, id: entry, lines, at: at(4), device: 'here' });
}

/** Everything of a ticket as expected but for some. */
async function countAll(ticket: string, but: Readonly<Record<string, number>> = {}): Promise<void> {
  const { parts } = await host.ask('ticket.read', { ticket });
  const lines = parts.flatMap((part) =>
    part.expected.map(({ component, quantity }) =>
      line(part.part, component, but[`${part.part} ${component}`] ?? quantity, 'ready'),
    ),
  );
  await enter(ticket, lines);
}

describe('a gang that was built, set, and stripped by its ticket', () => {
  let ticket = '';

  test('GA-1 stands at P01/A1, and its ticket expects what is booked to it, loose pieces what was issued', async () => {
    await host.ask('gang.build', {
      commandId: id(),
      gang: 'GA-1',
      design: 'GA',
      from: 'ENN',
      at: at(2, 7),
      turn: 'P01/A1',
    });
    await host.ask('gang.step', {
      commandId: id(),
      gang: 'GA-1',
      state: 'standing',
      at: at(2, 9),
      turn: 'P01/A1',
      job,
    });
    const made = await host.ask('ticket.make', {
      commandId: id(),
      job,
      turns: ['P01/A1'],
      loose: false,
    });
    ticket = made.ticket;
    expect(made.name).toBe('S-1');
    const { parts } = await host.ask('ticket.read', { ticket: 'S-1' });
    expect(parts).toHaveLength(1);
    expect(parts[0]).toMatchObject({ gang: 'GA-1', nextWords: 'Fly on to P04 side A, nr 1' });
    const { rows } = await host.ask('yard.quantities', { location: 'GA-1' });
    const inIt: Record<string, number> = {};
    for (const row of rows) inIt[row.component] = (inIt[row.component] ?? 0) + row.quantity;
    expect(
      Object.fromEntries(parts[0]?.expected.map((each) => [each.component, each.quantity]) ?? []),
    ).toEqual(inIt);
    expect(parts[0]?.expected.map((each) => each.from)).toEqual(Array.from(rows, () => 'GA-1'));
    expect(parts[0]?.expected[0]?.component).toBe('P436');
  });

  test('the same turn on a second ticket is refused while the first is open', async () => {
    const again = { commandId: id(), job, turns: ['P01/A1'], loose: false };
    expect(await host.refused('ticket.make', again)).toBe('turn-has-ticket');
    const { strips } = await host.ask('ticket.next', { job });
    expect(strips[0]?.turns.map((each) => each.turn)).toEqual(['P01/A2', 'P01/B1', 'P01/B2']);
  });

  test('two counters add up; the same entry again, be it after booking, changes nothing', async () => {
    await countAll(ticket, { 'P01/A1 LK': 20, 'P01/A1 WB': 1 });
    const entry = id();
    expect((await enter(ticket, [line('P01/A1', 'LK', 3)], entry)).repeated).toBe(false);
    expect((await enter(ticket, [line('P01/A1', 'LK', 3)], entry)).repeated).toBe(true);
    const { parts, entries } = await host.ask('ticket.read', { ticket });
    expect(entries.map((each) => each.pieces)).toEqual([49, 3]);
    expect(parts[0]?.expected.find((each) => each.component === 'LK')).toMatchObject({
      quantity: 26,
      counted: { ready: 20, 'to-clean': 3 },
      missing: 3,
    });
  });

  test('a twenty-seventh lock is refused, and so is a count on a part of another ticket', async () => {
    const entry = { commandId: id(), ticket, id: id(), at: at(4), device: 'phone of the carpenter' };
    const over = { ...entry, lines: [line('P01/A1', 'LK', 4)] };
    expect(await host.refused('ticket.enter', over)).toBe('more-than-expected');
    const other = { ...entry, lines: [line('P01/A2', 'LK', 4)] };
    expect(await host.refused('ticket.enter', other)).toBe('unknown-part');
  });

  test('the trial says what would move and moves nothing; without a clearance it carries a caution', async () => {
    const before = await held('LK');
    const trial = await host.ask('ticket.trial', { ticket, at: at(4) });
    expect(trial.missing.map((each) => [each.component, each.owner, each.quantity])).toEqual([
      ['LK', 'OURS', 3],
      ['WB', 'OURS', 1],
    ]);
    expect(trial.cautions).toHaveLength(1);
    expect(await held('LK')).toEqual(before);
    await host.ask('ticket.save', {
      commandId: id(),
      ticket,
      cleared: { by: 'The engineer', at: at(4, 13), clause: '7.3', evidence: 'cubes 4 and 5' },
    });
    expect((await host.ask('ticket.trial', { ticket, at: at(4) })).cautions).toEqual([]);
  });

  test('booked, 23 locks stay in the gang that flies on, 3 are lost, and the gang is stripped for P04/A1', async () => {
    const [locks, all] = [await held('LK'), await sumHeld('LK')];
    const booked = await host.ask('ticket.book', { commandId: id(), ticket, at: at(4) });
    expect(booked.gangs).toEqual([{ gang: 'GA-1', state: 'stripped', next: 'Fly on to P04 side A, nr 1' }]);
    const after = await held('LK');
    expect(after['GA-1 ready']).toBe(20);
    expect(after['GA-1 to-clean']).toBe(3);
    expect(after['LOST ready']).toBe(3);
    expect(after['ENN ready']).toBe(locks['ENN ready']);
    expect(await sumHeld('LK')).toBe(all);
    const { gangs } = await host.ask('gang.list', {});
    expect(gangs[0]).toMatchObject({ gang: 'GA-1', state: 'stripped' });
    const { problems } = await host.ask('book.check', {});
    expect(problems).toEqual([]);
  });

  test('booked again it is refused by whom and when; an entry of a day later too, unless it came before', async () => {
    expect(await host.refused('ticket.book', { commandId: id(), ticket, at: at(4) })).toBe('ticket-booked');
    const entry = {
      commandId: id(),
      ticket,
      id: id(),
      lines: [line('P01/A1', 'LK', 1)],
      at: at(5),
      device: 'here',
    };
    expect(await host.refused('ticket.enter', entry)).toBe('ticket-booked');
    const again = { commandId: id(), job, turns: ['P01/A1'], loose: false };
    expect(await host.refused('ticket.make', again)).toBe('ticket-booked');
  });

  test('2 of the 3 locks turn up: a second ticket brings them back and 1 lock and 1 bracket stay missing', async () => {
    const late = await host.ask('ticket.late', { commandId: id(), ticket });
    expect(await host.refused('ticket.late', { commandId: id(), ticket })).toBe('late-ticket-open');
    const { parts } = await host.ask('ticket.read', { ticket: late.ticket });
    expect(parts[0]?.expected.map((each) => [each.component, each.quantity, each.sought])).toEqual([
      ['LK', 0, 3],
      ['WB', 0, 1],
    ]);
    await enter(late.ticket, [line('P01/A1', 'LK', 2)]);
    await host.ask('ticket.book', { commandId: id(), ticket: late.ticket, at: at(6) });
    const after = await held('LK');
    expect(after['LOST ready']).toBe(1);
    const { stillMissing } = await host.ask('ticket.read', { ticket });
    expect(stillMissing).toEqual([
      { part: 'P01/A1', component: 'LK', quantity: 1 },
      { part: 'P01/A1', component: 'WB', quantity: 1 },
    ]);
    const { tickets } = await host.ask('ticket.list', { job });
    expect(tickets.map((each) => [each.name, each.state, each.missing])).toEqual([
      ['S-2', 'booked', 0],
      ['S-1', 'booked', 2],
    ]);
  });
});

describe('a ticket of pieces that were never issued', () => {
  test('of P02 the yard is expected to hold them, and two open tickets do not expect the same pieces', async () => {
    const first = await host.ask('ticket.make', { commandId: id(), job, pour: 'P02', loose: true });
    const { parts } = await host.ask('ticket.read', { ticket: first.ticket });
    expect(parts.map((part) => part.part)).toEqual(['P02/A1', 'P02/A2', 'P02/B1', 'P02/B2', 'loose']);
    expect(new Set(parts.flatMap((part) => part.expected.map((each) => each.from)))).toEqual(
      new Set(['ENN']),
    );
  });

  test('broken down by hand it goes to the laydown, in the condition counted', async () => {
    const [ticket] = (await host.ask('ticket.list', { job, state: 'open' })).tickets;
    const name = ticket?.id ?? '';
    await host.ask('ticket.save', {
      commandId: id(),
      ticket: name,
      place: 'TB',
      next: [{ part: 'P02/A1', next: { how: 'break-down', place: 'TB' } }],
    });
    await countAll(name, { 'P02/A1 P836': 3 });
    const before = await held('P836');
    const booked = await host.ask('ticket.book', { commandId: id(), ticket: name, at: at(5) });
    const after = await held('P836');
    expect(after['TB ready']).toBe(3);
    expect((after['LOST ready'] ?? 0) - (before['LOST ready'] ?? 0)).toBe(1);
    expect(booked.missing).toMatchObject([{ part: 'P02/A1', component: 'P836', owner: 'OURS', quantity: 1 }]);
  });

  test('a destination that the plan does not have is refused', async () => {
    const made = await host.ask('ticket.make', { commandId: id(), job, turns: ['P03/A1'], loose: false });
    const save = (next: { how: 'fly-on'; turn: string; pour: string }) => ({
      commandId: id(),
      ticket: made.ticket,
      next: [{ part: 'P03/A1', next }],
    });
    expect(await host.refused('ticket.save', save({ how: 'fly-on', turn: 'P99/A1', pour: 'P99' }))).toBe(
      'unknown-turn',
    );
    expect(await host.refused('ticket.save', save({ how: 'fly-on', turn: 'P05/A1', pour: 'P06' }))).toBe(
      'wrong-pour',
    );
    await host.ask('ticket.drop', { commandId: id(), ticket: made.ticket });
    expect(await host.refused('ticket.drop', { commandId: id(), ticket: made.ticket })).toBe(
      'ticket-dropped',
    );
    await host.ask('ticket.make', { commandId: id(), job, turns: ['P03/A1'], loose: false });
  });
});

describe('two people and one ticket', () => {
  test('both book it at once: one books, the other hears who did, and the pieces moved once', async () => {
    const made = await host.ask('ticket.make', { commandId: id(), job, turns: ['P03/A2'], loose: false });
    await countAll(made.ticket, { 'P03/A2 LK': 0 });
    const before = await sumHeld('LK');
    const lost = (await held('LK'))['LOST ready'] ?? 0;
    const { parts } = await host.ask('ticket.read', { ticket: made.ticket });
    const locks = parts[0]?.expected.find((each) => each.component === 'LK')?.quantity ?? 0;
    const book = async () => {
      try {
        await host.ask('ticket.book', { commandId: id(), ticket: made.ticket, at: at(7) });
        return 'booked';
      } catch (error) {
        return error instanceof Error ? error.message : '';
      }
    };
    const answers = await Promise.all([book(), book()]);
    expect(answers.filter((each) => each === 'booked')).toHaveLength(1);
    expect(answers.find((each) => each !== 'booked')).toContain('was booked by tester');
    expect(locks).toBeGreaterThan(0);
    expect((await held('LK'))['LOST ready']).toBe(lost + locks);
    expect(await sumHeld('LK')).toBe(before);
  });

  test('the same command sent twice books once and answers the same', async () => {
    const made = await host.ask('ticket.make', { commandId: id(), job, turns: ['P04/B1'], loose: false });
    await countAll(made.ticket);
    const command = { commandId: id(), ticket: made.ticket, at: at(7) };
    const first = await host.ask('ticket.book', command);
    expect(await host.ask('ticket.book', command)).toEqual(first);
  });

  test('a gang that was changed since its ticket was made is asked about, and expected anew', async () => {
    await host.ask('gang.build', {
      commandId: id(),
      gang: 'GA-9',
      design: 'GA',
      from: 'ENN',
      at: at(9, 7),
      turn: 'P05/A1',
    });
    await host.ask('gang.step', {
      commandId: id(),
      gang: 'GA-9',
      state: 'standing',
      at: at(9, 9),
      turn: 'P05/A1',
      job,
    });
    const made = await host.ask('ticket.make', { commandId: id(), job, turns: ['P05/A1'], loose: false });
    await countAll(made.ticket, { 'P05/A1 LK': 25 });
    await host.ask('yard.move', {
      commandId: id(),
      movements: [
        {
          id: id(),
          component: 'LK',
          quantity: 1,
          owner: 'OURS',
          from: 'GA-9',
          to: 'ENN',
          condition: 'ready',
          reason: 'transfer',
          at: at(10, 7),
        },
      ],
    });
    const book = { commandId: id(), ticket: made.ticket, at: at(12) };
    expect(await host.refused('ticket.book', book)).toBe('make-up-changed');
    await host.ask('ticket.save', { commandId: id(), ticket: made.ticket, expectAnew: true });
    const booked = await host.ask('ticket.book', { ...book, commandId: id() });
    expect(booked.missing).toEqual([]);
    expect(booked.lines.find((each) => each.component === 'LK')).toMatchObject({ expected: 25, ready: 25 });
  });

  test('an entry of another ticket, a ticket that is not there', async () => {
    const [one, other] = (await host.ask('ticket.list', { job, state: 'open' })).tickets;
    const made = await host.ask('ticket.make', { commandId: id(), job, turns: ['P05/B1'], loose: false });
    expect(one?.name).toBeDefined();
    const entry = id();
    await enter(made.ticket, [line('P05/B1', 'LK', 1)], entry);
    const there = {
      commandId: id(),
      ticket: one?.id ?? other?.id ?? '',
      id: entry,
      at: at(7),
      device: 'here',
    };
    const lines = [line('P03/A1', 'LK', 1)];
    expect(await host.refused('ticket.enter', { ...there, lines })).toBe('entry-of-other-ticket');
    expect(await host.refused('ticket.read', { ticket: 'S-999' })).toBe('unknown-ticket');
  });
});
