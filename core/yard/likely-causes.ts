// Where a difference may have come from, read off the book: papers still open, last moves, look-alikes, other owners,
// other jobs, losses. Each cause is a rule with its things and numbers; the words are made where they are shown. What
// weighs how much is common practice, no source: a cause that accounts for exactly as many pieces goes first.
import { momentMs } from './moment.ts';
import type { LocationKind, Movement } from './movement.ts';
import type { CountLine } from './stock-count.ts';

export type LikelyCause =
  | {
      readonly rule: 'look-alike';
      readonly other: string;
      readonly otherDifference: number;
      readonly quantity: number;
    }
  | {
      readonly rule: 'open-ticket';
      readonly ticket: string;
      readonly pour: string;
      readonly quantity: number;
    }
  | {
      readonly rule: 'draft-note';
      readonly note: string;
      readonly kind: string;
      readonly way: 'in' | 'out';
      readonly quantity: number;
    }
  | {
      readonly rule: 'other-owner';
      readonly owner: string;
      readonly otherDifference: number;
      readonly quantity: number;
    }
  | {
      readonly rule: 'returned-as-other';
      readonly owner: string;
      readonly at: string;
      readonly quantity: number;
    }
  | {
      readonly rule: 'other-place';
      readonly place: string;
      readonly otherDifference: number;
      readonly quantity: number;
    }
  | {
      readonly rule: 'last-move';
      readonly place: string;
      readonly kind: LocationKind;
      readonly way: 'came-from' | 'went-to';
      readonly at: string;
      readonly quantity: number;
    }
  | { readonly rule: 'other-job'; readonly place: string; readonly quantity: number }
  | { readonly rule: 'losses'; readonly lost: number; readonly turns: number; readonly quantity: number };

/** Another line of the same count with its difference. */
export interface OtherDifference extends CountLine {
  readonly difference: number;
}

export interface CauseFacts {
  readonly line: OtherDifference;
  readonly others: readonly OtherDifference[];
  /** Components that are taken for this one. */
  readonly partners: readonly string[];
  /** Of this component up to the count, newest first, without those taken back. */
  readonly movements: readonly Movement[];
  readonly locations: ReadonlyMap<string, LocationKind>;
  /** Open strip tickets that still expect this component: how many have not been counted on them. */
  readonly tickets: readonly { readonly name: string; readonly pour: string; readonly open: number }[];
  /** Notes not booked yet that have this component on them. */
  readonly drafts: readonly {
    readonly name: string;
    readonly kind: string;
    readonly from: string;
    readonly to: string;
    readonly quantity: number;
  }[];
  /** Pieces of it that other jobs have by the book. */
  readonly otherJobs: readonly { readonly place: string; readonly quantity: number }[];
  /** Lost so far, of so many pieces that came back from turns; null without record. */
  readonly losses: { readonly lost: number; readonly turns: number } | null;
}

/** The likeliest first; at most eight. */
export function likelyCauses(facts: CauseFacts): readonly LikelyCause[] {
  const { difference } = facts.line;
  if (difference === 0) return [];
  const weighed = [
    ...lookAlikes(facts),
    ...otherOwners(facts),
    ...otherPlaces(facts),
    ...openTickets(facts),
    ...draftNotes(facts),
    ...lastMoves(facts),
    ...returnedAsOther(facts),
    ...otherJobs(facts),
    ...losses(facts),
  ].map((cause, index) => ({ cause, index, weight: weightOf(cause, Math.abs(difference)) }));
  return weighed
    .sort((one, other) => other.weight - one.weight || one.index - other.index)
    .slice(0, 8)
    .map(({ cause }) => cause);
}

const weights: Readonly<Record<LikelyCause['rule'], number>> = {
  'look-alike': 9,
  'other-owner': 9,
  'other-place': 8,
  'draft-note': 8,
  'open-ticket': 7,
  'last-move': 5,
  'returned-as-other': 4,
  'other-job': 3,
  losses: 2,
};

function weightOf(cause: LikelyCause, size: number): number {
  const exact = cause.quantity === size ? 3 : cause.quantity > size ? 1 : 0;
  const unfetched = cause.rule === 'last-move' && (cause.kind === 'pour' || cause.kind === 'gang') ? 1 : 0;
  return weights[cause.rule] + exact + unfetched;
}

function isOpposite(one: OtherDifference, other: OtherDifference): boolean {
  return one.difference !== 0 && Math.sign(one.difference) === -Math.sign(other.difference);
}

function lookAlikes({ line, others, partners }: CauseFacts): readonly LikelyCause[] {
  return others
    .filter((other) => other.location === line.location && partners.includes(other.component))
    .filter((other) => isOpposite(line, other))
    .map(({ component, difference }) => ({
      rule: 'look-alike',
      other: component,
      otherDifference: difference,
      quantity: Math.min(Math.abs(difference), Math.abs(line.difference)),
    }));
}

function otherOwners({ line, others }: CauseFacts): readonly LikelyCause[] {
  return others.flatMap((other) =>
    other.location === line.location &&
    other.component === line.component &&
    other.owner !== null &&
    other.owner !== line.owner &&
    isOpposite(line, other)
      ? [
          {
            rule: 'other-owner' as const,
            owner: other.owner,
            otherDifference: other.difference,
            quantity: Math.min(Math.abs(other.difference), Math.abs(line.difference)),
          },
        ]
      : [],
  );
}

function otherPlaces({ line, others }: CauseFacts): readonly LikelyCause[] {
  return others
    .filter((other) => other.location !== line.location && other.component === line.component)
    .filter((other) => isOpposite(line, other))
    .map(({ location, difference }) => ({
      rule: 'other-place',
      place: location,
      otherDifference: difference,
      quantity: Math.min(Math.abs(difference), Math.abs(line.difference)),
    }));
}

/** Pieces that are short here may hang on a ticket that nobody booked; what was stripped and not counted on it is over. */
function openTickets({ tickets }: CauseFacts): readonly LikelyCause[] {
  return tickets
    .filter(({ open }) => open > 0)
    .map(({ name, pour, open }) => ({ rule: 'open-ticket', ticket: name, pour, quantity: open }));
}

/** Short: a note out that is not booked. Over: a note in that is not booked. */
function draftNotes({ line, drafts }: CauseFacts): readonly LikelyCause[] {
  const isShort = line.difference < 0;
  return drafts
    .filter(({ from, to }) => (isShort ? from : to) === line.location)
    .map(({ name, kind, quantity }) => ({
      rule: 'draft-note',
      note: name,
      kind,
      way: isShort ? 'out' : 'in',
      quantity,
    }));
}

/** Short: what was booked in and may never have come. Over: what was booked out and may never have gone. Each place once. */
function lastMoves({ line, movements, locations }: CauseFacts): readonly LikelyCause[] {
  const isShort = line.difference < 0;
  const places = new Map<string, LikelyCause>();
  for (const movement of movements) {
    const { from, to, at, quantity, reason } = movement;
    if (from === to || reason === 'opening' || reason === 'reversal') continue;
    if (line.owner !== null && movement.owner !== line.owner) continue;
    if ((isShort ? to : from) !== line.location) continue;
    const place = isShort ? from : to;
    const kind = locations.get(place);
    if (kind === undefined || kind === 'lost' || kind === 'opening' || places.has(place)) continue;
    places.set(place, {
      rule: 'last-move',
      place,
      kind,
      way: isShort ? 'came-from' : 'went-to',
      at,
      quantity,
    });
    if (places.size === 3) break;
  }
  return [...places.values()];
}

/** Short of one owner: the last return of another owner's pieces may have taken ours along. */
function returnedAsOther({ line, movements }: CauseFacts): readonly LikelyCause[] {
  if (line.difference > 0) return [];
  const last = movements.find(
    ({ reason, from, owner }) =>
      (reason === 'return' || reason === 'hire-off') && from === line.location && owner !== line.owner,
  );
  return last === undefined
    ? []
    : [{ rule: 'returned-as-other', owner: last.owner, at: last.at, quantity: last.quantity }];
}

function otherJobs({ line, otherJobs: jobs }: CauseFacts): readonly LikelyCause[] {
  if (line.difference > 0) return jobs.filter(({ quantity }) => quantity > 0).map(jobCause);
  return jobs.map(jobCause);
}

function jobCause({ place, quantity }: CauseFacts['otherJobs'][number]): LikelyCause {
  return { rule: 'other-job', place, quantity };
}

function losses({ line, losses: record }: CauseFacts): readonly LikelyCause[] {
  if (line.difference > 0 || record === null || record.lost === 0) return [];
  return [{ rule: 'losses', ...record, quantity: record.lost }];
}

/** Of these movements those up to a moment that still stand, newest first. */
export function standingBefore<T extends Movement & { readonly reversedBy: string | null }>(
  movements: readonly T[],
  at: string,
): readonly T[] {
  const ms = momentMs(at) ?? 0;
  const time = (movement: T): number => momentMs(movement.at) ?? 0;
  return movements
    .filter((each) => each.reversedBy === null && each.reverses === null && time(each) <= ms)
    .sort((one, other) => time(other) - time(one));
}
