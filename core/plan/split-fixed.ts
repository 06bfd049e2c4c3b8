// Fixed choices that a plan can obey, apart from those that it cannot: a follow that the hours do not allow, or one that
// contradicts another. Of two that contradict each other the one fixed first is kept.
import { never } from '../answer.ts';
import type { FixedChoice } from './choices.ts';
import { mayFollow } from './follows.ts';
import type { Model } from './model.ts';

export interface ImpossibleChoice {
  readonly choice: FixedChoice;
  /** The place of the choice in the list. */
  readonly index: number;
  /** The choice that it contradicts, where it is one. */
  readonly other: FixedChoice | null;
  readonly otherIndex: number | null;
  readonly message: string;
}

export interface SplitChoices {
  readonly obeyed: readonly FixedChoice[];
  readonly impossible: readonly ImpossibleChoice[];
}

export function splitFixed(model: Model, fixed: readonly FixedChoice[]): SplitChoices {
  const place = new Map(model.turnIds.map((id, index) => [id, index]));
  const obeyed: { readonly choice: FixedChoice; readonly index: number }[] = [];
  const impossible: ImpossibleChoice[] = [];
  for (const [index, choice] of fixed.entries()) {
    const alone = whyNotAlone(model, place, choice);
    const other =
      alone === null ? obeyed.find((each) => contradict(model, place, each.choice, choice)) : undefined;
    if (alone === null && other === undefined) {
      obeyed.push({ choice, index });
      continue;
    }
    impossible.push({
      choice,
      index,
      other: other?.choice ?? null,
      otherIndex: other?.index ?? null,
      message: alone ?? `${sentence(choice)}, and ${words(other?.choice ?? choice)}: both cannot be.`,
    });
  }
  return { obeyed: obeyed.map(({ choice }) => choice), impossible };
}

function whyNotAlone(model: Model, place: ReadonlyMap<string, number>, choice: FixedChoice): string | null {
  const missing = turnsOf(choice).find((id) => !place.has(id));
  if (missing !== undefined) return `${sentence(choice)}, but there is no turn ${missing}.`;
  if (choice.kind !== 'follow') return null;
  const [earlier, later] = [place.get(choice.from) ?? 0, place.get(choice.to) ?? 0];
  if (mayFollow(model, earlier, later)) return null;
  return `${sentence(choice)}, but ${whyNoFollow(model, earlier, later)}.`;
}

function whyNoFollow(model: Model, earlier: number, later: number): string {
  const { textOf } = model.instants;
  const [from, to] = [model.turnIds[earlier] ?? '', model.turnIds[later] ?? ''];
  const stripped = model.to[earlier] ?? 0;
  const set = model.from[later] ?? 0;
  if (earlier === later) return 'a gang cannot follow itself';
  const times = `${from} is stripped at ${textOf(stripped)} and ${to} set from ${textOf(set)}`;
  if (stripped > set) return times;
  if (stripped + model.flyOnUnits > set) return `${times}, too soon to fly the gang on`;
  const [left, right] = [model.design[earlier] ?? 0, model.design[later] ?? 0];
  const designs = `${model.designCodes[left] ?? ''} into ${model.designCodes[right] ?? ''}`;
  const { regang, calendar } = model;
  const work = regang.units(left, right);
  const fits = calendar.workAfter(stripped + model.flyOnUnits, work) <= set;
  if (fits) return `${designs}: the two designs share no piece`;
  return `${times}, with fewer than the ${regang.hours(left, right)} hours of work that re-ganging ${designs} takes`;
}

/** Whether two choices, each possible alone, cannot both be obeyed. */
function contradict(
  model: Model,
  place: ReadonlyMap<string, number>,
  one: FixedChoice,
  other: FixedChoice,
): boolean {
  if (one.kind === 'no-regang' || other.kind === 'no-regang') {
    const [kept, follow] = one.kind === 'no-regang' ? [one, other] : [other, one];
    if (kept.kind !== 'no-regang' || follow.kind !== 'follow' || follow.from !== kept.turn) return false;
    const design = (id: string): number => model.design[place.get(id) ?? 0] ?? 0;
    return design(follow.from) !== design(follow.to);
  }
  return differ(arrivalOf(one), arrivalOf(other)) || differ(departureOf(one), departureOf(other));
}

interface Way {
  readonly turn: string;
  /** The turn on the other side; null where a run begins or ends. */
  readonly with: string | null;
}

function differ(one: Way | null, other: Way | null): boolean {
  return one !== null && other !== null && one.turn === other.turn && one.with !== other.with;
}

type Simple = Exclude<FixedChoice, { kind: 'no-regang' }>;

/** What the choice says of how a gang comes to a turn; null where it says nothing of it. */
function arrivalOf(choice: Simple): Way | null {
  if (choice.kind === 'follow') return { turn: choice.to, with: choice.from };
  return choice.kind === 'assemble' ? { turn: choice.turn, with: null } : null;
}

function departureOf(choice: Simple): Way | null {
  if (choice.kind === 'follow') return { turn: choice.from, with: choice.to };
  return choice.kind === 'break-down' ? { turn: choice.turn, with: null } : null;
}

export function turnsOf(choice: FixedChoice): readonly string[] {
  return choice.kind === 'follow' ? [choice.from, choice.to] : [choice.turn];
}

function sentence(choice: FixedChoice): string {
  const text = words(choice);
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The choice in words, as part of a sentence. */
function words(choice: FixedChoice): string {
  switch (choice.kind) {
    case 'follow':
      return `it is fixed that the gang of ${choice.from} goes on to ${choice.to}`;
    case 'assemble':
      return `it is fixed that the gang of ${choice.turn} is assembled for it`;
    case 'break-down':
      return `it is fixed that the gang of ${choice.turn} is broken down after it`;
    case 'no-regang':
      return `it is fixed that the gang of ${choice.turn} is not re-ganged`;
    default:
      return never(choice);
  }
}
