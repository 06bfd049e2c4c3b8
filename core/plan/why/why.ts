// Why a plan does with a gang what it does: the other ways it could come to a turn, or go from it, each planned anew
// with that way fixed. What a way costs is what the whole plan costs more with it, not what it costs by itself.
import { answer, type Answer, refuse } from '../../answer.ts';
import type { FixedChoice, Instruction } from '../choices.ts';
import type { PlanAnswer, PlanInput } from '../contract.ts';
import type { Model } from '../model.ts';
import { readModel } from '../plan-reuse.ts';
import { type BarredFollow, barredFollows } from './barred-follows.ts';
import {
  type Alike,
  alikeIn,
  leftOpenAt,
  type OpenWay,
  openWays,
  type Side,
  withFixed,
} from './open-ways.ts';

export interface Way {
  readonly choice: FixedChoice;
  /** Of a follow: hours of work of the re-gang, and clock hours between the strip and the next setting. */
  readonly regangH: number;
  readonly gapH: number;
}

/** Another way, and the plan that takes it. */
export interface Alternative extends Way {
  readonly plan: PlanAnswer;
  readonly costMore: number;
  /** Pieces short for a day that cannot be hired: so many more, or fewer. */
  readonly unmetMore: number;
}

export interface Decision {
  readonly side: Side;
  readonly chosen: Way;
  /** What a person fixed here. To go another way it would have to be released. */
  readonly fixed: readonly FixedChoice[];
  /** The one that costs least first. */
  readonly alternatives: readonly Alternative[];
  readonly barred: readonly BarredFollow[];
  /** Ways there are besides, each by its least cost dearer to begin with, that were not planned. */
  readonly others: number;
}

export interface WhyQuestion {
  readonly input: PlanInput;
  readonly plan: PlanAnswer;
  readonly planWith: (input: PlanInput) => Answer<PlanAnswer>;
  /** The pour of a turn: which of its like gangs goes somewhere is not weighed. */
  readonly placeOf: (turn: string) => string;
}

export interface HowMany {
  readonly planned: number;
  /** Making it anew, or taking it apart, is among them whatever it costs. */
  readonly withApart: boolean;
  readonly barred: number;
}

export function decisionAt(
  question: WhyQuestion,
  turnId: string,
  side: Side,
  most: HowMany,
): Answer<Decision> {
  const { plan, planWith } = question;
  const { input, released } = leftOpenAt(question.input, turnId, side);
  const read = readModel(input);
  if (!read.ok) return read;
  const model = read.value;
  const turn = model.turnIds.indexOf(turnId);
  if (turn < 0)
    return refuse('unknown-turn', `The plan has no turn ${turnId}.`, {
      field: 'turn',
      hint: 'Maybe its pour was changed; turns are named as P04/A1.',
    });
  const alike = alikeIn(model, question.placeOf);
  const chosen = chosenAt(plan, turnId, side);
  const ways = openWays(model, { turn, side }, alike);
  const isChosen = (choice: Instruction): boolean =>
    choice.kind === chosen.kind &&
    otherKey(choice, side, model, alike) === otherKey(chosen, side, model, alike);
  const others = ways.filter(({ choice }) => !isChosen(choice));
  const wanted: readonly FixedChoice[] = [
    ...worthPlanning(others, most).map(({ choice }) => choice),
    ...notMadeIntoAnother(chosen, side, input),
  ];
  const alternatives: Alternative[] = [];
  for (const choice of wanted) {
    const planned = planWith(withFixed(input, [...(input.fixed ?? []), choice]));
    if (!planned.ok) return planned;
    const { cost } = planned.value;
    alternatives.push({
      ...withHours(model, choice),
      plan: planned.value,
      costMore: cost.total - plan.cost.total,
      unmetMore: cost.unmet - plan.cost.unmet,
    });
  }
  const open = new Set(ways.flatMap(({ choice }) => otherKey(choice, side, model, alike) ?? []));
  return answer({
    side,
    chosen: withHours(model, chosen),
    fixed: released,
    alternatives: alternatives.toSorted(
      (one, other) => one.unmetMore - other.unmetMore || one.costMore - other.costMore,
    ),
    barred: barredFollows(model, { turn, side }, { alike, placeOf: question.placeOf }, open, most.barred),
    others: others.length - worthPlanning(others, most).length,
  });
}

function worthPlanning(ways: readonly OpenWay[], { planned, withApart }: HowMany): readonly OpenWay[] {
  return ways.filter((way, index) => index < planned || (withApart && way.choice.kind !== 'follow'));
}

/** How the gang comes to the turn by the plan, or where it goes from it. */
export function chosenAt({ runs }: Pick<PlanAnswer, 'runs'>, turn: string, side: Side): Instruction {
  const run = runs.find(({ turns }) => turns.includes(turn))?.turns ?? [];
  const place = run.indexOf(turn);
  if (side === 'arrival') {
    const from = run[place - 1];
    return from === undefined || place === 0
      ? { kind: 'assemble', turn }
      : { kind: 'follow', from, to: turn };
  }
  const to = run[place + 1];
  return to === undefined ? { kind: 'break-down', turn } : { kind: 'follow', from: turn, to };
}

function withHours(model: Model, choice: FixedChoice): Way {
  if (choice.kind !== 'follow') return { choice, regangH: 0, gapH: 0 };
  const [earlier, later] = [model.turnIds.indexOf(choice.from), model.turnIds.indexOf(choice.to)];
  const hour = 3_600_000 * model.instants.scale.unitsPerMs;
  return {
    choice,
    regangH: model.regang.hours(model.design[earlier] ?? 0, model.design[later] ?? 0),
    gapH: ((model.from[later] ?? 0) - (model.to[earlier] ?? 0)) / hour,
  };
}

/** The turn at the other end of a follow, as far as it matters which. */
function otherKey(choice: Instruction, side: Side, model: Model, alike: Alike): string | null {
  if (choice.kind !== 'follow') return null;
  return alike(model.turnIds.indexOf(side === 'arrival' ? choice.from : choice.to));
}

/** Where a gang is made into another, not to do that is a choice of its own: it leaves open what is done instead. */
function notMadeIntoAnother(chosen: Instruction, side: Side, input: PlanInput): readonly FixedChoice[] {
  if (side !== 'departure' || chosen.kind !== 'follow') return [];
  const designs = new Map(input.turns.map(({ id, design }) => [id, design]));
  return designs.get(chosen.from) === designs.get(chosen.to)
    ? []
    : [{ kind: 'no-regang', turn: chosen.from }];
}
