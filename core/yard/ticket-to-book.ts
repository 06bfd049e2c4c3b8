// What is known when a strip ticket is booked: gathered by who reads the book, judged by what decides.
import type { Gang } from './gang.ts';
import type { Location, Owner } from './movement.ts';
import type { PooledLine } from './piece-pool.ts';
import type { StockLine } from './quantities.ts';
import type { StripTicket, TicketEntry } from './strip-ticket.ts';

export interface TicketToBook {
  readonly ticket: StripTicket;
  readonly entries: readonly TicketEntry[];
  readonly at: string;
  readonly who: string;
  /** Quantities at that moment. */
  readonly stock: readonly StockLine[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  readonly gangs: readonly Gang[];
  /** On a ticket of late finds: what the first one booked as lost and no other found since. */
  readonly lost: readonly Omit<PooledLine, 'location'>[];
  /** What nobody counted came back as expected; else it is asked about. */
  readonly uncountedAsExpected: boolean;
}
