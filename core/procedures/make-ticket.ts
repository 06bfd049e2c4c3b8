// Makes a strip ticket: the gangs of a pour with where the plan has each go next, or gangs named by hand, and the loose
// pieces of the pour. A turn is on one ticket only.
import { answer, type Answer, refuse } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import { componentKinds } from '../catalogue/component.ts';
import { instantText } from '../plan/local-time.ts';
import { isLoose } from '../yard/movement.ts';
import type { StockLine } from '../yard/quantities.ts';
import { loosePart, type StripTicket } from '../yard/strip-ticket.ts';
import { takingOrder } from '../yard/take-from.ts';
import { expectedParts, type PlannedPart } from '../yard/ticket-expected.ts';
import { found } from './by-code.ts';
import { layingPlace } from './gang-places.ts';
import { readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { shownTurns } from './shown-turns.ts';
import {
  chosenTurns,
  gangParts,
  looseOf,
  type ShownTurn,
  type TicketAsked,
  turnParts,
  unknownTurn,
} from './ticket-parts.ts';
import { unknownPour } from './unknown.ts';

export type NewTicket = Omit<StripTicket, 'id' | 'number'>;

/** Codes: unknown-job, unknown-pour, unknown-turn, two-pours, unknown-gang, turn-has-ticket, ticket-booked, nothing-to-strip … */
export async function newTicket(book: BookReader, asked: TicketAsked): Promise<Answer<NewTicket>> {
  const facts = await readJobFacts(book, asked.job);
  if (!facts.ok) return facts;
  const planned = planJob(facts.value);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const turns = shownTurns(plan.runs, plan.turnsOf.turns, facts.value.job.timeZone);
  const tickets = (await book.tickets({ job: asked.job })).filter(({ state }) => state !== 'dropped');
  const pour = pourOf(asked, plan, turns);
  if (!pour.ok) return pour;
  const place = await placeOf(book, asked.place);
  if (!place.ok) return place;
  const chosen = chosenTurns(asked, turns, pour.value, tickets);
  if (!chosen.ok) return chosen;
  const byHand = await gangParts(book, asked, place.value);
  if (!byHand.ok) return byHand;
  const plannedAt = asked.at ?? stripEnd(plan, pour.value);
  const parts = [
    ...(await turnParts(book, asked.job, chosen.value, turns, place.value, plan)),
    ...byHand.value,
  ];
  const loose = asked.loose ? looseOf(asked, plan, pour.value, tickets) : answer(null);
  if (!loose.ok) return loose;
  const expected = await withExpected(book, [...parts, ...(loose.value ?? [])], plannedAt);
  const filled = expected.filter((part) => part.part !== loosePart || part.expected.length > 0);
  if (filled.length === 0)
    return refuse('nothing-to-strip', `Nothing of ${pour.value} is left to put on a ticket.`, {
      field: 'turns',
      hint: 'Maybe it is on another ticket, or the pour has no gangs yet.',
    });
  return answer({
    job: asked.job,
    pour: pour.value,
    state: 'open',
    result: null,
    follows: null,
    parts: filled,
    place: place.value,
    plannedAt,
    cleared: null,
    remark: asked.remark ?? null,
  });
}

/**
 * Expected pieces of parts: of gangs and pours what is booked to them by now, of the yard what lies there at that moment.
 * @param but a ticket whose own claim on the yard does not count
 */
export async function withExpected(
  book: BookReader,
  parts: readonly PlannedPart[],
  at: string,
  but: string | null = null,
) {
  const [stock, booked, locations, owners, components, open] = await Promise.all([
    book.stock(at),
    book.stock(),
    book.locations(),
    book.owners(),
    book.components(),
    book.tickets({ state: 'open' }),
  ]);
  const kinds = new Map(locations.map(({ code, kind }) => [code, kind]));
  const lies = (line: StockLine): boolean => isLoose(kinds.get(line.location) ?? 'lost');
  const isThere = (code: string | null): boolean =>
    booked.some((line) => line.location === code && line.quantity > 0);
  return expectedParts(
    // A pour to which nothing was issued gives nothing: its pieces are taken to be the yard's.
    parts.map((part) => (part.gang === null && !isThere(part.bookedTo) ? { ...part, bookedTo: null } : part)),
    {
      stock: [...stock.filter(lies), ...booked.filter((line) => !lies(line))],
      locations,
      order: takingOrder(owners),
      catalogue: inCatalogueOrder(components),
      claimed: open
        .filter(({ id }) => id !== but)
        .flatMap((ticket) => ticket.parts.flatMap((part) => part.expected))
        .filter(({ from, quantity }) => quantity > 0 && isLoose(kinds.get(from) ?? 'lost')),
    },
  );
}

/** Panels first, then what holds them together, then what goes on them; of one kind by code. */
function inCatalogueOrder(components: readonly BookComponent[]): readonly string[] {
  return [...components]
    .sort((one, other) => rankOf(one) - rankOf(other) || (one.code < other.code ? -1 : 1))
    .map(({ code }) => code);
}

function rankOf({ kind }: BookComponent): number {
  return componentKinds.indexOf(kind);
}

function pourOf(asked: TicketAsked, plan: JobPlan, turns: readonly ShownTurn[]): Answer<string> {
  const pours = new Set(asked.pour === undefined ? [] : [asked.pour]);
  for (const id of asked.turns ?? []) {
    const turn = turns.find((each) => each.id === id);
    if (turn === undefined) return unknownTurn(id, asked.job, turns);
    pours.add(turn.pour);
  }
  const [pour, other] = pours;
  if (pour === undefined)
    return refuse('needs-pour', 'Which pour is stripped is not said.', {
      field: 'pour',
      hint: 'Maybe name the pour, or turns as P01/A1.',
    });
  if (other !== undefined)
    return refuse('two-pours', `One ticket is of one pour; these turns are of ${[...pours].join(' and ')}.`, {
      field: 'turns',
      hint: 'Maybe make a ticket for each pour.',
    });
  return plan.facts.pours.some(({ code }) => code === pour) ? answer(pour) : unknownPour(pour, asked.job);
}

async function placeOf(book: BookReader, asked: string | undefined): Promise<Answer<string>> {
  const locations = await book.locations();
  const first = (['yard', 'site', 'rack'] as const)
    .map((kind) => locations.find((each) => each.kind === kind))
    .find((each) => each !== undefined);
  const place = asked ?? first?.code;
  if (place === undefined)
    return refuse('no-place', 'The book has no yard in which stripped pieces could be laid.', {
      field: 'place',
      hint: 'Maybe enter one.',
    });
  const laid = await layingPlace(book, place);
  return laid.ok ? laid : { ok: false, error: { ...laid.error, field: 'place' } };
}

function stripEnd(plan: JobPlan, pour: string): string {
  return instantText(found(plan.turnsOf.times, pour).stripTo, plan.facts.job.timeZone);
}
