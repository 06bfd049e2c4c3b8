// Why a component is short at a moment: which gangs hold it then and what for, and, for those that do not stand at their
// pour just then, what they could do otherwise and how many would be short even so.
import { answer, type Answer, refuse } from '../../answer.ts';
import type { PlanAnswer, Shortfall } from '../contract.ts';
import { firstTurns, holdsOf, type Followers, type Hold } from '../holding.ts';
import { msOf } from '../local-time.ts';
import type { Model } from '../model.ts';
import { followersOf, readModel } from '../plan-reuse.ts';
import { alikeIn, type Side } from './open-ways.ts';
import { type Alternative, decisionAt, type WhyQuestion } from './why.ts';

/** What a gang holds the pieces for at the moment. */
export type Doing = 'assembled' | 'made-into' | 'stands' | 'waits' | 'taken-apart';

export interface GangHolding {
  /** Like gangs of one pour that do the same, as turns. */
  readonly turns: readonly string[];
  readonly pieces: number;
  readonly doing: Doing;
  /** ISO 8601: when it ends. */
  readonly until: string;
  /** Where a gang that waits goes next. */
  readonly next: string | null;
  /** The other way that leaves the fewest short; null where there is none, or the gang stands at its pour. */
  readonly otherwise: { readonly alternative: Alternative; readonly shortThen: number } | null;
}

export interface ShortQuestion extends WhyQuestion {
  readonly component: string;
  readonly from: string;
}

/** At most so many groups of gangs have their other ways planned, those that hold most first. */
const mostPlanned = 5;

export function whyShort(question: ShortQuestion): Answer<readonly GangHolding[]> {
  const { input, plan, component, from } = question;
  const shortfall = plan.shortfalls.find((each) => each.component === component && each.from === from);
  if (shortfall === undefined)
    return refuse('no-such-shortfall', `Nothing of ${component} becomes short at ${from}.`, {
      field: 'from',
      hint: 'Maybe the plan has changed since.',
    });
  const read = readModel(input);
  if (!read.ok) return read;
  const model = read.value;
  const followers = followersOf(model, plan.runs);
  if (!followers.ok) return followers;
  const groups = holdingGroups(model, followers.value, shortfall, question.placeOf);
  const found: GangHolding[] = [];
  let planned = 0;
  for (const group of groups) {
    const side = sideOf(group.doing);
    if (side === null || planned >= mostPlanned) {
      found.push({ ...group, otherwise: null });
      continue;
    }
    planned += 1;
    const decision = decisionAt(question, group.turns[0] ?? '', side, {
      planned: 1,
      withApart: true,
      barred: 0,
    });
    if (!decision.ok) return decision;
    found.push({ ...group, otherwise: bestOf(decision.value.alternatives, shortfall) });
  }
  return answer(found);
}

/** Which of its two ways a gang would have to change for the pieces to be free; null while it stands. */
function sideOf(doing: Doing): Side | null {
  if (doing === 'stands') return null;
  return doing === 'assembled' || doing === 'made-into' ? 'arrival' : 'departure';
}

function bestOf(alternatives: readonly Alternative[], shortfall: Shortfall): GangHolding['otherwise'] {
  const [best] = alternatives
    .map((alternative) => ({ alternative, shortThen: shortIn(alternative.plan, shortfall) }))
    .toSorted(
      (one, other) =>
        one.shortThen - other.shortThen ||
        one.alternative.unmetMore - other.alternative.unmetMore ||
        one.alternative.costMore - other.alternative.costMore,
    );
  return best ?? null;
}

/** The most pieces short of the component at one moment while the shortfall lasts. */
function shortIn({ shortfalls }: PlanAnswer, { component, from, to }: Shortfall): number {
  return shortfalls
    .filter(
      (each) => each.component === component && msOf(each.from) < msOf(to) && msOf(each.to) > msOf(from),
    )
    .reduce((most, { quantity }) => Math.max(most, quantity), 0);
}

type Group = Omit<GangHolding, 'otherwise'>;

function holdingGroups(
  model: Model,
  followers: Followers,
  shortfall: Shortfall,
  placeOf: (turn: string) => string,
): readonly Group[] {
  const component = model.codes.indexOf(shortfall.component);
  const at = model.instants.unitsOf(shortfall.from);
  const there = holdsOf(model, followers).filter(
    (hold) => hold.component === component && hold.from <= at && at < hold.to && hold.turn !== undefined,
  );
  const alike = alikeIn(model, placeOf);
  const firsts = new Set(firstTurns(followers));
  const groups = new Map<string, Group & { readonly untilAt: number }>();
  for (const hold of there) {
    const turn = hold.turn ?? 0;
    const later = followers[turn] ?? -1;
    const doing = doingOf(model, hold, turn, later, firsts.has(turn), at);
    const next = doing === 'waits' && later >= 0 ? (model.turnIds[later] ?? null) : null;
    const key = [alike(turn), doing, next === null ? '' : placeOf(next)].join(' ');
    const known = groups.get(key);
    const id = model.turnIds[turn] ?? '';
    const untilAt = Math.max(hold.to, known?.untilAt ?? hold.to);
    groups.set(key, {
      turns: [...new Set([...(known?.turns ?? []), id])],
      pieces: (known?.pieces ?? 0) + hold.quantity,
      doing,
      until: model.instants.textOf(untilAt),
      untilAt,
      next: known?.next ?? next,
    });
  }
  return [...groups.values()]
    .toSorted((one, other) => other.pieces - one.pieces)
    .map(({ untilAt: _untilAt, ...group }) => group);
}

function doingOf(model: Model, hold: Hold, turn: number, later: number, isFirst: boolean, at: number): Doing {
  if (at < (model.from[turn] ?? 0)) return isFirst ? 'assembled' : 'made-into';
  if (at < (model.to[turn] ?? 0)) return 'stands';
  // What both turns have waits until the next setting; what is taken out is free before.
  return later >= 0 && hold.to === model.from[later] ? 'waits' : 'taken-apart';
}
