// Everything that the sheet of shortfalls shows, out of the plan as the book has it; laying it out comes after (core/sheets).
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { dayWords } from '../sheets/day-words.ts';
import type { ShortfallSheetFacts, ShortLine, ShortWay } from '../sheets/shortfall-sheet.ts';
import { roughMoney } from '../units/money.ts';
import { callsFor } from './calls-for.ts';
import { readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { waysOf } from './remembered-ways.ts';
import { decisionsOf, type ShownDecision } from './shortfall-decisions.ts';
import { planOthers } from './shortfall-ways.ts';
import { shownShortfalls } from './shown-plan.ts';
import type { ShownShortfall, Way, WaysAnswer } from './ways-shapes.ts';

/** For so many, the earliest, ways out are looked for; a sheet is not waited for longer. */
const mostLookedFor = 12;

export async function readShortfallSheet(
  book: BookReader,
  job: string,
  now: string | undefined,
): Promise<Answer<ShortfallSheetFacts>> {
  const facts = await readJobFacts(book, job, now);
  if (!facts.ok) return facts;
  const planned = planJob(facts.value);
  if (!planned.ok) return planned;
  const others = await planOthers(book, job, now);
  if (!others.ok) return others;
  const plan = planned.value;
  const { planning, yard, changeNumber } = facts.value;
  const shortfalls = shownShortfalls(plan);
  const decisions = new Map(
    decisionsOf(shortfalls, planning.decisions).map((each) => [each.shortfall, each]),
  );
  return answer({
    job: facts.value.job,
    changeNumber,
    lines: shortfalls.map((shortfall, place) => {
      const found =
        place < mostLookedFor ? waysOf({ plan, shortfall, others: others.value, nowMs: yard.nowMs }) : null;
      return lineOf(plan, shortfall, found, decisions.get(shortfall.id));
    }),
    phones: planning.settings.phones,
    units: facts.value.job.units,
  });
}

function lineOf(
  plan: JobPlan,
  shortfall: ShownShortfall,
  found: WaysAnswer | null,
  decision: ShownDecision | undefined,
): ShortLine {
  const { component, name, quantity, from, to } = shortfall;
  return {
    component,
    name,
    quantity,
    from,
    to,
    holders: holdersOf(shortfall),
    way: found === null ? { kind: 'not-looked-for' } : wayOf(plan, found),
    near: (found?.ask ?? []).map((near) => `${near.component}, ${near.spare} to spare`),
    decision: decision === undefined ? '' : decisionText(decision),
  };
}

function wayOf(plan: JobPlan, { ways, tried, currency }: WaysAnswer): ShortWay {
  const [way] = ways;
  if (way === undefined) return { kind: 'none', why: tried.flatMap(({ why }) => why ?? []) };
  // Those who work at a pour that is poured later; an earlier strip is asked of whoever answers for it.
  const touched = new Set(way.changes.flatMap((change) => (change.kind === 'move' ? [change.pour] : [])));
  const calls = callsFor(plan, touched, way.changes).map(({ who, about, pour }) =>
    pour === null ? who : `${who} (${about}, ${pour})`,
  );
  return {
    kind: 'found',
    text: way.text,
    cost: roughMoney(way.costCents, currency),
    movesClash: way.movesClash,
    order: orderText(way),
    ask: [...approvers(way), ...calls],
  };
}

function orderText({ order }: Way): string {
  if (order === null) return '';
  return order.isOver
    ? `To be ordered by ${dayWords(order.by)}: that is over`
    : `Order by ${dayWords(order.by)}`;
}

function approvers({ approval }: Way): readonly string[] {
  return approval.map(({ pour }) => `whoever answers for the strip of ${pour}`);
}

/** "P05: 42", the pieces of each pour, the most first. */
function holdersOf({ turns, loose }: ShownShortfall): readonly string[] {
  const pieces = new Map<string, number>();
  for (const each of [...turns, ...loose]) pieces.set(each.pour, (pieces.get(each.pour) ?? 0) + each.pieces);
  return [...pieces].toSorted(([, one], [, other]) => other - one).map(([pour, many]) => `${pour}: ${many}`);
}

function decisionText({ decision, reason, who, hasGrown }: ShownDecision): string {
  const words = decision === 'ignored' ? 'left as it is' : 'on the hire list';
  const why = reason === '' ? '' : `: ${reason}`;
  return `${words}${why}, ${who}${hasGrown ? '; but grew since' : ''}`;
}
