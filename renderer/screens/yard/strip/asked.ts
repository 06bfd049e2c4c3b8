// What the core answers of strip tickets, as types alone: files without a window take them from here.
import type { z } from 'zod';
import type { Procedures } from '../../../../core/procedures/all.ts';

type Input<N extends keyof Procedures> = z.input<Procedures[N]['input']>;
type Output<N extends keyof Procedures> = z.output<Procedures[N]['output']>;

export type Ticket = Output<'ticket.read'>;
export type TicketPart = Ticket['parts'][number];
export type TicketLine = TicketPart['expected'][number];
export type TicketRow = Output<'ticket.list'>['tickets'][number];
export type NextStrip = Output<'ticket.next'>['strips'][number];
export type Booking = Output<'ticket.trial'>;
export type EntryLine = Input<'ticket.enter'>['lines'][number];
export type Next = NonNullable<TicketPart['next']>;
export type Clearance = NonNullable<Ticket['ticket']['cleared']>;
