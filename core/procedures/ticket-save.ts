// Changes an open strip ticket: who cleared it, where each gang goes next, where pieces are laid, a remark, when it is
// to be stripped; or has its expected pieces worked out anew after the book has changed. What was counted stays.
import { z } from 'zod';
import { answer, type Answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import type { Pour } from '../plan/pours.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { notOpen } from '../yard/check-ticket-booking.ts';
import { remark } from '../yard/paper-shapes.ts';
import {
  loosePart,
  nextOfGang,
  type NextOfGang,
  type StripTicket,
  ticketName,
} from '../yard/strip-ticket.ts';
import { readDesignFacts } from './design-facts.ts';
import { layingPlace } from './gang-places.ts';
import { withExpected } from './make-ticket.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { findTicket } from './ticket-facts.ts';
import { loosePartOf, standingAt, unknownTurn } from './ticket-parts.ts';
import { clearance, partName, ticketId } from './ticket-shapes.ts';

const change = z.strictObject({
  cleared: clearance.nullable().optional(),
  next: z
    .array(z.strictObject({ part: partName, next: nextOfGang }))
    .max(60)
    .optional(),
  place: code.optional(),
  remark: remark.nullable().optional(),
  plannedAt: instant.optional(),
  /** Work out anew what is expected: pieces were put into a gang or taken out since the ticket was made. */
  expectAnew: z.boolean().optional(),
});
type Change = z.output<typeof change>;

export const ticketSave = command({
  name: 'ticket.save',
  input: z.strictObject({ commandId, ticket: ticketId, ...change.shape }),
  output: z.strictObject({ ticket: z.string(), name: z.string() }),
  run: async (book, { ticket: asked, ...changes }) => {
    const found = await findTicket(book, asked);
    if (!found.ok) return found;
    const refusal = notOpen(found.value);
    if (refusal !== null) return { ok: false, error: refusal };
    const changed = await changedTicket(book, found.value, changes);
    if (!changed.ok) return changed;
    await book.putTicket(changed.value);
    return answer({ ticket: found.value.id, name: ticketName(found.value) });
  },
});

async function changedTicket(
  book: BookReader,
  ticket: StripTicket,
  changes: Change,
): Promise<Answer<StripTicket>> {
  const place = changes.place ?? ticket.place;
  const laid = await layingPlace(book, place);
  if (!laid.ok) return { ok: false, error: { ...laid.error, field: 'place' } };
  // What was to be broken down where the ticket lays things down goes along with it.
  const parts = ticket.parts.map((part) =>
    part.next?.how === 'break-down' && part.next.place === ticket.place
      ? { ...part, next: { how: 'break-down' as const, place } }
      : part,
  );
  for (const [index, { part: name, next }] of (changes.next ?? []).entries()) {
    const at = parts.findIndex(({ part }) => part === name);
    const part = parts[at];
    const field = `next.${index}`;
    if (part === undefined || name === loosePart || ticket.follows !== null)
      return refuse('not-a-gang', `${name} on ${ticketName(ticket)} is no gang that goes on.`, { field });
    const allowed = await allowedNext(book, ticket.job, next);
    if (!allowed.ok) return { ok: false, error: { ...allowed.error, field } };
    parts[at] = { ...part, next };
  }
  const changed: StripTicket = {
    ...ticket,
    parts,
    place,
    plannedAt: changes.plannedAt ?? ticket.plannedAt,
    cleared: changes.cleared === undefined ? ticket.cleared : changes.cleared,
    remark: changes.remark === undefined ? ticket.remark : changes.remark,
  };
  return changes.expectAnew === true && ticket.follows === null
    ? expectedAnew(book, changed)
    : answer(changed);
}

/** Codes: unknown-turn, wrong-pour, wrong-design, unknown-location, not-loose. */
async function allowedNext(book: BookReader, job: string, next: NextOfGang): Promise<Answer<null>> {
  if (next.how === 'break-down' || next.how === 'stand-by') {
    const laid = await layingPlace(book, next.place);
    return laid.ok ? answer(null) : laid;
  }
  const turns = await turnsOfJob(book, job);
  const turn = turns.find(({ id }) => id === next.turn);
  if (turn === undefined) return unknownTurn(next.turn, job, turns);
  if (turn.pour !== next.pour)
    return refuse('wrong-pour', `${next.turn} is a turn of ${turn.pour}, not of ${next.pour}.`);
  if (next.how === 'regang' && turn.design !== next.design)
    return refuse('wrong-design', `${next.turn} asks for ${turn.design}, not for ${next.design}.`);
  return answer(null);
}

async function turnsOfJob(book: BookReader, code_: string) {
  const job = await book.job(code_);
  const pours: readonly Pour[] = await book.pours(code_);
  return job === null ? [] : turnsFromPours(job, pours, new Map()).turns;
}

async function expectedAnew(book: BookReader, ticket: StripTicket): Promise<Answer<StripTicket>> {
  const [job, pours, designs, gangs] = await Promise.all([
    book.job(ticket.job),
    book.pours(ticket.job),
    readDesignFacts(book),
    book.gangs(),
  ]);
  if (!designs.ok) return designs;
  const loose: Record<string, number> = {};
  for (const line of job === null ? [] : turnsFromPours(job, pours, designs.value).loose)
    if (line.pour === ticket.pour) loose[line.component] = (loose[line.component] ?? 0) + line.quantity;
  const planned = ticket.parts.map((part) => {
    if (part.part === loosePart) return loosePartOf(ticket.job, ticket.pour, loose);
    // One that was booked as built since the ticket was made.
    const built = part.turn === null ? undefined : standingAt(gangs, ticket.job, part.turn);
    const gang = part.gang ?? built?.code ?? null;
    const pieces = designs.value.get(part.design ?? '')?.pieces ?? {};
    return { ...part, gang, bookedTo: gang, pieces };
  });
  const parts = await withExpected(book, planned, ticket.plannedAt, ticket.id);
  return answer({ ...ticket, parts: [...parts] });
}
