// Ways out by other times or gangs of the pours that hold the pieces: poured some working days later with what must come
// after, stripped by another criterion, or formed with another design.
import { movePour } from '../plan/move-pour.ts';
import { instantText, msOf } from '../plan/local-time.ts';
import { pourTimes } from '../plan/pour-times.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import type { Pour } from '../plan/pours.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { shortWithSameRuns } from '../plan/ways/same-runs.ts';
import { found } from './by-code.ts';
import type { DesignFacts } from './design-facts.ts';
import type { Candidate, Group, WaysQuestion } from './ways-trial.ts';

const mostDays = 10;
/** Of one pour so many lengths of slip are planned before it is given up. */
const triesEach = 2;

/** A pour changed, and what would be short with every gang on its way; null where the entries do not fit. */
export interface PourOption {
  readonly candidate: Candidate;
  readonly changed: readonly Pour[];
  readonly left: number | null;
  /** Working days by which it is poured later. */
  readonly days: number;
}

export function slipWays(question: WaysQuestion): readonly Group[] {
  return slippable(question).flatMap((pour): Group[] => {
    const tries: Candidate[] = [];
    for (let days = 1; days <= mostDays && tries.length < triesEach; days += 1) {
      const option = slipOption(question, pour, days);
      if (option.left === 0) tries.push(option.candidate);
    }
    return tries.length === 0 ? [] : [{ kind: 'slip', tries }];
  });
}

/** Later pours and other criteria that help only in part: of each pour those that leave fewer short than any before. */
export function partOptions(question: WaysQuestion): readonly PourOption[] {
  const days = Array.from({ length: mostDays }, (_, index) => index + 1);
  const lists = [
    ...slippable(question).map((pour) => days.map((each) => slipOption(question, pour, each))),
    ...strippable(question).map((pour) => stripOptions(question, pour)),
  ];
  return lists.flatMap((list) => {
    let least = question.shortfall.quantity;
    return list.filter(({ left }) => {
      if (left === null || left >= least) return false;
      least = left;
      return true;
    });
  });
}

function slipOption(question: WaysQuestion, pour: Pour, days: number): PourOption {
  const changed = movedWith(question, pour, days);
  return {
    candidate: slip(pour, changed, days),
    changed,
    left: shortThen(question, changed),
    days,
  };
}

/** Nobody sets a pour later that stands already. */
function slippable(question: WaysQuestion): readonly Pour[] {
  return holdersOf(question).filter((pour) => firstSet(question, pour) > question.nowMs);
}

function slip(pour: Pour, moved: readonly Pour[], days: number): Candidate {
  const others = moved.filter(({ code }) => code !== pour.code).map(({ code }) => code);
  const also = others.length === 0 ? '' : `, and ${others.join(', ')} after it`;
  return {
    kind: 'slip',
    changes: moved.map(({ code }): PlanChange => ({ kind: 'move', pour: code, workingDays: days })),
    text: `Pour ${pour.code} ${days} working ${days === 1 ? 'day' : 'days'} later${also}`,
  };
}

/** The pour moved, and with it, as far, what would else be poured before it though it comes after. */
function movedWith({ plan }: WaysQuestion, pour: Pour, days: number): readonly Pour[] {
  const { job, pours } = plan.facts;
  const moved = new Map([[pour.code, movePour(pour, days, job)]]);
  for (let more = true; more;) {
    more = false;
    for (const later of pours) {
      if (moved.has(later.code)) continue;
      const isOvertaken = later.after.some((code) => {
        const before = moved.get(code);
        return before !== undefined && msOf(before.finishAt) >= msOf(later.finishAt);
      });
      if (!isOvertaken) continue;
      moved.set(later.code, movePour(later, days, job));
      more = true;
    }
  }
  return [...moved.values()];
}

/** How many would be short with every gang on its way; a quick look before planning. */
export function shortThen({ plan, shortfall }: WaysQuestion, changed: readonly Pour[]): number | null {
  const { job, designs, planning } = plan.facts;
  const { turns, loose } = turnsFromPours(job, changed, designs, planning.pourFacts);
  const text = (each: { readonly id: string; readonly from: number; readonly to: number }) =>
    [
      each.id,
      { from: instantText(each.from, job.timeZone), to: instantText(each.to, job.timeZone) },
    ] as const;
  return shortWithSameRuns(
    { input: plan.input, runs: plan.answer.runs, component: shortfall.component },
    { turns: new Map(turns.map(text)), loose: new Map(loose.map(text)) },
    shortfall,
  );
}

/** Never fewer hours than the least that is common for walls: 12 in total at 50 F or more (trade rule of ACI 347R-94). */
const criteria = [24, 12];

export function stripWays(question: WaysQuestion): readonly Group[] {
  return strippable(question).flatMap((pour): Group[] => {
    const tries = stripOptions(question, pour).filter(({ left }) => left === 0);
    return tries.length === 0 ? [] : [{ kind: 'strip', tries: tries.map(({ candidate }) => candidate) }];
  });
}

function stripOptions(question: WaysQuestion, pour: Pour): readonly PourOption[] {
  return criteria
    .filter((hours) => hours < pour.stripMinimumH)
    .map((hours): PourOption => {
      const changed = [{ ...pour, stripMinimumH: hours }];
      return {
        candidate: {
          kind: 'strip',
          changes: [{ kind: 'strip', pour: pour.code, stripMinimumH: hours, approvedBy: null }],
          text: `Strip ${pour.code} after ${hours} h instead of ${pour.stripMinimumH} h, if a named person approves`,
        },
        changed,
        left: shortThen(question, changed),
        days: 0,
      };
    });
}

function strippable(question: WaysQuestion): readonly Pour[] {
  const { job } = question.plan.facts;
  return holdersOf(question).filter((pour) => pourTimes(pour, job).stripFrom > question.nowMs);
}

/** Another design of the same size, edges and system whose gangs take fewer of the pieces: on both sides, so that ties line up. */
export function designWays(question: WaysQuestion): readonly Group[] {
  const { plan, shortfall } = question;
  const { designs } = plan.facts;
  const pieces = ({ pieces: all }: DesignFacts): number => all[shortfall.component] ?? 0;
  return holdersOf(question)
    .filter((pour) => firstSet(question, pour) > question.nowMs)
    .flatMap((pour) => {
      const used = new Set(pour.sides.flatMap(({ gangs }) => gangs.map(({ design }) => design)));
      return [...used].flatMap((code): Group[] => {
        const own = found(designs, code);
        const like = [...designs.values()]
          .filter((other) => formsTheSame(own, other) && pieces(other) < pieces(own))
          .toSorted((one, other) => pieces(one) - pieces(other));
        const tries = like.slice(0, triesEach).map((other) => otherDesign(pour, code, other.design.code));
        return tries.length === 0 ? [] : [{ kind: 'design', tries }];
      });
    });
}

function otherDesign(pour: Pour, design: string, other: string): Candidate {
  const changes = pour.sides.flatMap(({ side, gangs }) =>
    gangs.flatMap((gang, index): PlanChange[] =>
      gang.design === design
        ? [{ kind: 'design', pour: pour.code, side, position: index + 1, design: other }]
        : [],
    ),
  );
  const many = changes.length === 1 ? 'the gang' : `the ${changes.length} gangs`;
  return { kind: 'design', changes, text: `Form ${pour.code} with ${other} in place of ${many} ${design}` };
}

function formsTheSame(one: DesignFacts, other: DesignFacts): boolean {
  const { hand } = other.design;
  return (
    one.design.code !== other.design.code &&
    one.design.system === other.design.system &&
    one.takeOff.widthNm === other.takeOff.widthNm &&
    one.takeOff.heightNm === other.takeOff.heightNm &&
    (hand === one.design.hand || hand === 'symmetrical') &&
    JSON.stringify(one.edges) === JSON.stringify(other.edges)
  );
}

/** The pours whose gangs or loose pieces hold what is short, in the order in which they are set. */
function holdersOf(question: WaysQuestion): readonly Pour[] {
  const { plan, shortfall } = question;
  const codes = new Set([...shortfall.turns, ...shortfall.loose].map(({ pour }) => pour));
  return plan.facts.pours
    .filter(({ code }) => codes.has(code))
    .toSorted((one, other) => firstSet(question, other) - firstSet(question, one));
}

function firstSet({ plan }: WaysQuestion, { code }: Pour): number {
  return Math.min(...found(plan.turnsOf.times, code).sides.map(({ setFrom }) => setFrom));
}
