// What is kept on the phone: papers as they were last read, drafts that grow with every tap, and batches that are on
// their way. A batch never changes once it has its id; only its state does.
import type { z } from 'zod';
import type { countList } from '../../../core/procedures/count-list.ts';
import type { countRead } from '../../../core/procedures/count-read.ts';
import type { ticketList } from '../../../core/procedures/ticket-list.ts';
import type { ticketRead } from '../../../core/procedures/ticket-read.ts';
import type { Condition } from '../../../core/yard/movement.ts';

export type ReadTicket = z.output<typeof ticketRead.output>;
export type ReadCount = z.output<typeof countRead.output>;
export type TicketRow = z.output<typeof ticketList.output>['tickets'][number];
export type CountRow = z.output<typeof countList.output>['counts'][number];

export type Counter = 1 | 2;

/** The paper that something is counted on; a count is another paper for each of its counters. */
export interface Paper {
  /** `ticket ID`, or `count ID 1` */
  readonly key: string;
  readonly kind: 'ticket' | 'count';
  readonly id: string;
  /** S-7 or N-3 */
  readonly name: string;
  readonly counter: Counter;
}

export type KeptPaper = Paper &
  (
    | { readonly kind: 'ticket'; readonly read: ReadTicket }
    | { readonly kind: 'count'; readonly read: ReadCount }
  );

export interface EntryLine {
  /** The part of a ticket, or the place of a count. */
  readonly group: string;
  readonly component: string;
  /** On a count, where it is counted by owner. */
  readonly owner: string | null;
  readonly condition: Condition;
  /** On a ticket: beyond what it expects, said on purpose. */
  readonly extra: boolean;
  /** On a ticket what is added, below zero what is taken back; on a count what lies there. */
  readonly quantity: number;
}

export interface Draft {
  readonly paper: Paper;
  readonly lines: readonly EntryLine[];
  /** By the phone's clock: when the last line was counted. */
  readonly at: string;
}

export interface KeptRefusal {
  readonly code: string;
  readonly message: string;
  readonly hint?: string;
}

/**
 * `waiting`: not known to have come in. `done`: it came in, and the paper was not read since. `refused`: looked at and
 * not taken, with the reason. `late`: put on the list of late finds.
 */
export type BatchState = 'waiting' | 'done' | 'refused' | 'late';

export interface Batch {
  readonly id: string;
  readonly paper: Paper;
  readonly lines: readonly EntryLine[];
  readonly at: string;
  readonly state: BatchState;
  /** Why it was refused, or why it still waits. */
  readonly refusal: KeptRefusal | null;
}

export interface Work {
  readonly job: string;
  readonly tickets: readonly TicketRow[];
  readonly counts: readonly CountRow[];
}

export function sameLine(one: EntryLine, other: EntryLine): boolean {
  return sameThing(one, other) && one.condition === other.condition && one.extra === other.extra;
}

type Thing = Pick<EntryLine, 'group' | 'component' | 'owner'>;

export function sameThing(one: Thing, other: Thing): boolean {
  return one.group === other.group && one.component === other.component && one.owner === other.owner;
}
