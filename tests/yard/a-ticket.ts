// A strip ticket written in a few words, and what booking it moves written as words.
import { type BookedTicket, bookTicket } from '../../core/yard/book-ticket.ts';
import type { Answer } from '../../core/answer.ts';
import type { Gang } from '../../core/yard/gang.ts';
import {
  conditions,
  type Condition,
  type Location,
  type Movement,
  type Owner,
} from '../../core/yard/movement.ts';
import type { StockLine } from '../../core/yard/quantities.ts';
import type { NextOfGang, StripTicket, TicketEntry } from '../../core/yard/strip-ticket.ts';
import type { TicketToBook } from '../../core/yard/ticket-to-book.ts';

export const at = '2026-03-05T15:00:00-05:00';

export const owners: readonly Owner[] = [
  { code: 'HIRE', name: 'Hire', kind: 'supplier', agreement: 'H1' },
  { code: 'OURS', name: 'Ours', kind: 'ours', agreement: null },
];

export const locations: readonly Location[] = [
  ['YARD', 'yard'],
  ['BACK', 'yard'],
  ['G-1', 'gang'],
  ['J1/P01', 'pour'],
  ['LOST', 'lost'],
  ['HIRE', 'supplier'],
].map(([code = '', kind = '']) => ({ code, name: code, kind: kind as Location['kind'] }));

/** "LK 6 OURS G-1 ready; LK 4 HIRE G-1" */
export function stockOf(text: string): StockLine[] {
  return pieces(text).map(([component = '', quantity, owner = '', location = '', condition = 'ready']) => ({
    component,
    quantity: Number(quantity),
    owner,
    location,
    condition: condition as Condition,
    basis: null,
    basisDate: null,
  }));
}

/** "LK 6 to-clean; LK 2 scrapped HIRE; W 1 ready extra" */
export function linesOf(text: string, part = 'P01/A1'): TicketEntry['lines'] {
  return pieces(text).map(([component = '', quantity, condition, ...more]) => {
    const owner = more.find((word) => word !== 'extra' && !word.startsWith('@'));
    return {
      part: more.find((word) => word.startsWith('@'))?.slice(1) ?? part,
      component,
      quantity: Number(quantity),
      condition: condition as Condition,
      ...(owner !== undefined && { owner }),
      ...(more.includes('extra') && { extra: true as const }),
    };
  });
}

export function entriesOf(...texts: readonly string[]): TicketEntry[] {
  return texts
    .filter((text) => text !== '')
    .map((text, index) => ({
      id: `entry-${index}`,
      number: index + 1,
      at,
      who: 'counter',
      device: 'here',
      lines: linesOf(text),
    }));
}

export const nexts: Readonly<Record<string, NextOfGang | null>> = {
  'break-down': { how: 'break-down', place: 'YARD' },
  'fly-on': { how: 'fly-on', turn: 'P02/A1', pour: 'P02' },
  regang: { how: 'regang', turn: 'P02/B1', pour: 'P02', design: 'GB' },
  'stand-by': { how: 'stand-by', place: 'BACK' },
  loose: null,
};

/** A ticket of one part: the gang G-1, or what stands loose. Expected: "LK 10 G-1; P1 2 G-1". */
export function ticketOf(expected: string, next: string, more: Partial<StripTicket> = {}): StripTicket {
  const isLoose = next === 'loose';
  return {
    id: 'ticket-1',
    number: 1,
    job: 'J1',
    pour: 'P01',
    state: 'open',
    result: null,
    follows: null,
    place: 'YARD',
    plannedAt: at,
    cleared: null,
    remark: null,
    parts: [
      {
        part: 'P01/A1',
        turn: isLoose ? null : 'P01/A1',
        gang: isLoose || !expected.includes('G-1') ? null : 'G-1',
        design: isLoose ? null : 'GA',
        next: nexts[next] ?? null,
        expected: pieces(expected).map(([component = '', quantity, from = '']) => ({
          component,
          quantity: Number(quantity),
          from,
        })),
      },
    ],
    ...more,
  };
}

export const standing: Gang = {
  code: 'G-1',
  last: {
    gang: 'G-1',
    number: 2,
    state: 'standing',
    at: '2026-03-02T07:00:00-05:00',
    who: 'setter',
    design: 'GA',
    designState: 1,
    place: 'J1/P01',
    laying: 'upright',
    job: 'J1',
    turn: 'P01/A1',
    nextTurn: null,
    remark: null,
  },
};

export function booked(
  ticket: StripTicket,
  stock: string,
  entries: readonly TicketEntry[],
  more: Partial<TicketToBook> = {},
): Answer<BookedTicket> {
  return bookTicket({
    ticket,
    entries,
    at,
    who: 'booker',
    stock: stockOf(stock),
    locations,
    owners,
    gangs: [standing],
    lost: [],
    uncountedAsExpected: false,
    ...more,
  });
}

/** "LK 6 OURS G-1>YARD ready>to-clean strip" */
export function moveWords(movement: Movement): string {
  const { component, quantity, owner, from, to, condition, conditionAfter, reason } = movement;
  const state = condition === conditionAfter ? condition : `${condition}>${conditionAfter}`;
  return `${component} ${quantity} ${owner} ${from}>${to} ${state} ${reason}`;
}

export function wordsOfMoves(movements: readonly Movement[]): string {
  return movements.map(moveWords).join('; ');
}

/** Rows of a table with bars between its cells; the first row names them. */
export function rowsOf(table: string): string[][] {
  return table
    .trim()
    .split('\n')
    .slice(1)
    .map((row) => row.split('|').map((cell) => cell.trim()));
}

function pieces(text: string): string[][] {
  return text
    .split(';')
    .map((each) => each.trim())
    .filter((each) => each !== '')
    .map((each) => each.split(/\s+/u));
}

export const allConditions: readonly Condition[] = conditions;
