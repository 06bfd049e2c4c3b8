// The parts of a strip ticket before their pieces are known: turns of the plan, gangs named by hand, loose pieces. What
// is on a ticket already cannot be put on another.
import { answer, type Answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import type { Gang } from '../yard/gang.ts';
import type { Pieces } from '../yard/piece-moves.ts';
import { loosePart, type NextOfGang, type StripTicket, ticketName } from '../yard/strip-ticket.ts';
import type { PlannedPart } from '../yard/ticket-expected.ts';
import { found } from './by-code.ts';
import { pourPlaceCode } from './gang-places.ts';
import type { JobPlan } from './job-plan.ts';
import type { shownTurns } from './shown-turns.ts';

export type ShownTurn = ReturnType<typeof shownTurns>[number];

export interface TicketAsked {
  readonly job: string;
  readonly pour?: string | undefined;
  /** Ids of turns, as P01/A1; absent: all of the pour that are on no ticket. */
  readonly turns?: readonly string[] | undefined;
  /** Tags of gangs that stand there without a turn of the plan. */
  readonly gangs?: readonly string[] | undefined;
  readonly loose: boolean;
  /** When it is stripped; absent: by the plan. */
  readonly at?: string | undefined;
  /** Where it is laid down; absent: the first yard. */
  readonly place?: string | undefined;
  readonly remark?: string | undefined;
}

export function unknownTurn(id: string, job: string, turns: readonly { readonly id: string }[]) {
  const [pour = ''] = id.split('/');
  const near = turns.filter((each) => each.id.startsWith(`${pour}/`)).map((each) => each.id);
  return refuse('unknown-turn', `Job ${job} has no turn ${id}.`, {
    field: 'turns',
    hint:
      near.length > 0
        ? `Maybe one of ${near.join(', ')}.`
        : 'Maybe the pour was changed; a turn is written as P01/A1, the first gang on side A of P01.',
  });
}

export function chosenTurns(
  asked: TicketAsked,
  turns: readonly ShownTurn[],
  pour: string,
  tickets: readonly StripTicket[],
): Answer<readonly ShownTurn[]> {
  const ticketOf = (turn: string): StripTicket | undefined =>
    tickets.find(({ parts, follows }) => follows === null && parts.some((part) => part.turn === turn));
  if (asked.turns === undefined && asked.gangs === undefined)
    return answer(turns.filter((turn) => turn.pour === pour && ticketOf(turn.id) === undefined));
  const chosen: ShownTurn[] = [];
  for (const id of new Set(asked.turns)) {
    const ticket = ticketOf(id);
    if (ticket !== undefined) return hasTicket(id, ticket);
    const turn = turns.find((each) => each.id === id);
    if (turn !== undefined) chosen.push(turn);
  }
  return answer(chosen);
}

/** A turn, or the loose pieces of a pour, on a ticket already: open, or booked by whom and when. */
function hasTicket(what: string, ticket: StripTicket) {
  const name = ticketName(ticket);
  if (ticket.result !== null)
    return refuse(
      'ticket-booked',
      `${what} was stripped on ${name}, booked by ${ticket.result.who} at ${ticket.result.at}.`,
      { field: 'turns', hint: `Maybe what turned up since belongs on a ticket of late finds of ${name}.` },
    );
  return refuse('turn-has-ticket', `${what} is on ${name} already, which is open.`, {
    field: 'turns',
    hint: `Maybe count on ${name}, or drop it first.`,
  });
}

export async function turnParts(
  book: BookReader,
  job: string,
  chosen: readonly ShownTurn[],
  turns: readonly ShownTurn[],
  place: string,
  plan: JobPlan,
): Promise<readonly PlannedPart[]> {
  const gangs = await book.gangs();
  return chosen.map((turn) => {
    const gang = standingAt(gangs, job, turn.id);
    return {
      part: turn.id,
      turn: turn.id,
      gang: gang?.code ?? null,
      design: gang?.last.design ?? turn.design,
      next: nextOf(turn, turns, place),
      bookedTo: gang?.code ?? null,
      pieces: found(plan.facts.designs, turn.design).pieces,
    };
  });
}

/** The gang that stands for a turn; none where nobody booked one as built and set. */
export function standingAt(gangs: readonly Gang[], job: string, turn: string): Gang | undefined {
  return gangs.find(({ last }) => last.state === 'standing' && last.job === job && last.turn === turn);
}

export function nextOf(
  turn: Pick<ShownTurn, 'after'>,
  turns: readonly ShownTurn[],
  place: string,
): NextOfGang {
  const { after } = turn;
  if (after.how === 'break-down') return { how: 'break-down', place };
  const to = turns.find((each) => each.id === after.turn);
  const pour = to?.pour ?? '';
  return after.how === 'fly-on'
    ? { how: 'fly-on', turn: after.turn, pour }
    : { how: 'regang', turn: after.turn, pour, design: to?.design ?? '' };
}

/** Gangs named by hand go back to the yard until somebody says otherwise. */
export async function gangParts(
  book: BookReader,
  { gangs: asked = [] }: TicketAsked,
  place: string,
): Promise<Answer<readonly PlannedPart[]>> {
  const gangs = await book.gangs();
  const parts: PlannedPart[] = [];
  for (const tag of new Set(asked)) {
    const gang = gangs.find(({ code }) => code === tag);
    if (gang === undefined || gang.last.state !== 'standing')
      return refuse('not-standing', `No gang ${tag} stands at a pour.`, {
        field: 'gangs',
        hint: 'Maybe it was stripped already, or its tag is written in another way.',
      });
    const { turn, design } = gang.last;
    const next = { how: 'break-down', place } as const;
    parts.push({ part: turn ?? tag, turn, gang: tag, design, next, bookedTo: tag, pieces: {} });
  }
  return answer(parts);
}

export function looseOf(
  { job }: TicketAsked,
  plan: JobPlan,
  pour: string,
  tickets: readonly StripTicket[],
): Answer<readonly PlannedPart[] | null> {
  const before = tickets.find(
    (each) =>
      each.pour === pour && each.follows === null && each.parts.some(({ part }) => part === loosePart),
  );
  if (before !== undefined) return hasTicket(`What stands loose at ${pour}`, before);
  const pieces: Record<string, number> = {};
  for (const line of plan.turnsOf.loose)
    if (line.pour === pour) pieces[line.component] = (pieces[line.component] ?? 0) + line.quantity;
  return answer([loosePartOf(job, pour, pieces)]);
}

export function loosePartOf(job: string, pour: string, pieces: Pieces): PlannedPart {
  const bookedTo = pourPlaceCode(job, pour);
  return { part: loosePart, turn: null, gang: null, design: null, next: null, bookedTo, pieces };
}
