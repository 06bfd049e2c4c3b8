// The questions of strip tickets, each asked once of the demo job.
import { expect } from 'vitest';
import { job, type DemoHost } from './demo-host.ts';

const at = '2026-03-16T15:00:00-05:00';

export async function askOfTickets(ask: DemoHost['ask']): Promise<void> {
  const { strips } = await ask('ticket.next', { job });
  const turn = strips[0]?.turns[0]?.turn ?? '';
  const expected = await ask('ticket.expect', { job, turns: [turn], loose: false });
  expect(expected.parts.map((part) => part.part)).toEqual([turn]);
  const { ticket, name } = await ask('ticket.make', {
    commandId: 'demo-ticket-1',
    job,
    turns: [turn],
    loose: false,
  });
  const { parts } = await ask('ticket.read', { ticket });
  expect(parts).toEqual(expected.parts);
  const lines = parts.flatMap((part) =>
    part.expected.map(({ component, quantity }) => ({
      part: part.part,
      component,
      condition: 'to-clean' as const,
      quantity: quantity - 1,
    })),
  );
  await ask('ticket.enter', { commandId: 'demo-ticket-2', ticket, id: 'demo-entry-1', lines, at });
  await ask('ticket.save', { commandId: 'demo-ticket-3', ticket, remark: 'Rain in the morning' });
  expect((await ask('sheet.strip', { id: name })).title).toBe(`Strip ticket ${name} ${expected.pour}`);
  const trial = await ask('ticket.trial', { ticket, at });
  const booked = await ask('ticket.book', { commandId: 'demo-ticket-4', ticket, at });
  expect({ ...booked, who: undefined }).toEqual({ ...trial, who: undefined });
  expect(booked.missing).toHaveLength(lines.length);
  const late = await ask('ticket.late', { commandId: 'demo-ticket-5', ticket });
  await ask('ticket.drop', { commandId: 'demo-ticket-6', ticket: late.ticket });
  const other = strips[0]?.turns[1]?.turn ?? '';
  const counted = (await ask('ticket.expect', { job, turns: [other], loose: false })).parts.flatMap((part) =>
    part.expected.map(({ component, quantity }) => ({ component, ready: quantity })),
  );
  const stripped = await ask('ticket.strip', {
    commandId: 'demo-ticket-7',
    job,
    turn: other,
    lines: counted,
  });
  expect(stripped.missing).toEqual([]);
  const { tickets } = await ask('ticket.list', { job });
  expect(tickets.map((each) => each.state)).toEqual(['booked', 'dropped', 'booked']);
}
