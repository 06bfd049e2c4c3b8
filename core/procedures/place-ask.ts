// What placing pours rests on, out of the plan of those that have a date: what each would hold and work, the pieces that
// the plan leaves over time, the hours that the crew has left.
import { answer, type Answer } from '../answer.ts';
import { shiftsBetween, workAfter, workBefore } from '../plan/calendar.ts';
import { curvesOf } from '../plan/curves.ts';
import { leftOver } from '../plan/dates/left-over.ts';
import type { PlaceAsk } from '../plan/dates/place-pours.ts';
import type { CrewWork, HeldPieces } from '../plan/dates/day-grid.ts';
import { dayOfDate } from '../plan/days.ts';
import { unitsOfHours } from '../plan/hours.ts';
import { msOf, zoneOf } from '../plan/local-time.ts';
import type { PourTimes } from '../plan/pour-times.ts';
import type { Pour } from '../plan/pours.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { found } from './by-code.ts';
import { aroundOf } from './date-facts.ts';
import type { JobFacts } from './job-facts.ts';
import type { JobPlan } from './job-plan.ts';
import { jobWork } from './job-work.ts';

/** Enough for the sequences of a job; a search ends sooner where nothing can be earlier. */
const schedules = 600;

export function placeAsk(plan: JobPlan, free: readonly Pour[], seed: number): Answer<PlaceAsk> {
  const { facts, input } = plan;
  const curves = input.turns.length === 0 ? answer([]) : curvesOf(input, plan.answer.runs);
  if (!curves.ok) return curves;
  const held = new Map(curves.value.map((each) => [each.component, inMs(each.demandHeldByPlan)]));
  const levels = [...facts.stock].map(([component, { levels: list }]) => {
    const stock = inMs(list);
    return [component, leftOver(stock, held.get(component) ?? [])] as const;
  });
  return answer({
    around: aroundOf(facts),
    free,
    piecesOf: (pour) => piecesOf(facts, pour),
    workOf,
    workOfDated: crewWorkOf(plan),
    levels: new Map(levels),
    schedules,
    seed,
  });
}

/** Of each day, from the start of its first shift: only how much it is counts. */
function crewWorkOf(plan: JobPlan): readonly CrewWork[] {
  const { job } = plan.facts;
  const zone = zoneOf(job.timeZone);
  return jobWork(plan).crew.flatMap(({ date, hoursNeeded }) => {
    const day = dayOfDate(date);
    const [shift] = shiftsBetween(zone.startMs(day), zone.startMs(day + 1), job.shifts);
    if (shift === undefined || hoursNeeded === 0) return [];
    const to = workAfter(shift.from, hoursNeeded / job.crew, job.shifts);
    return [{ from: shift.from, to: Math.min(to, zone.startMs(day + 1)) }];
  });
}

function inMs(steps: readonly { readonly from: string | null; readonly quantity: number }[]) {
  return steps.map(({ from, quantity }) => ({ fromMs: from === null ? -Infinity : msOf(from), quantity }));
}

/** As if every gang were assembled for the pour and broken down after it: a plan that flies it on holds less. */
function piecesOf({ job, designs }: JobFacts, pour: Pour): readonly HeldPieces[] {
  const { turns, loose } = turnsFromPours(job, [pour], designs);
  const clean = unitsOfHours(job.cleanH, 1);
  return [
    ...turns.flatMap(({ design: code, from, to }) => {
      const { design, pieces } = found(designs, code);
      return Object.entries(pieces).map(([component, quantity]) => ({
        component,
        quantity,
        from: workBefore(from, design.assembleH, job.shifts),
        to: workAfter(to, design.breakDownH, job.shifts) + clean,
      }));
    }),
    ...loose.map(({ component, quantity, from, to }) => ({ component, quantity, from, to: to + clean })),
  ];
}

function workOf(_: Pour, { sides, stripFrom, stripTo }: PourTimes): readonly CrewWork[] {
  return [
    ...sides.map(({ setFrom, setTo }) => ({ from: setFrom, to: setTo })),
    { from: stripFrom, to: stripTo },
  ].filter(({ from, to }) => to > from);
}
