// Where lines can be counted that their own ticket does not take any more: on the ticket of its late finds, or on another
// open one of the same pour that has the same parts.
import type { Batch, Paper, TicketRow } from '../kept/kept.ts';
import type { Kept } from '../kept/state.ts';

export function otherTickets({ papers, work }: Kept, { paper, lines }: Batch): readonly Paper[] {
  if (paper.kind !== 'ticket' || work === null) return [];
  const own = papers.find(({ key }) => key === paper.key);
  const pour = own?.kind === 'ticket' ? own.read.ticket.pour : null;
  const hasParts = (ticket: TicketRow): boolean =>
    lines.every(({ group }) => ticket.parts.some(({ part }) => part === group));
  return work.tickets
    .filter((ticket) => ticket.id !== paper.id && hasParts(ticket))
    .filter((ticket) => ticket.follows?.id === paper.id || ticket.pour === pour)
    .map(paperOfTicket);
}

export function paperOfTicket({ id, name }: Pick<TicketRow, 'id' | 'name'>): Paper {
  return { key: `ticket ${id}`, kind: 'ticket', id, name, counter: 1 };
}
