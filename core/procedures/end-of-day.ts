// What the end of a day would change: the moves, and what is to be said of steps that move no pour. A day ended once
// more is reckoned from the plan as it was before its first end: what that moved is taken back first.
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { type DayMoves, dayMoves } from '../plan/day-end/day-moves.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { changedSource } from './changed-source.ts';
import { type DayFacts, readDay } from './day-facts.ts';
import { type EndFinding, dueFindings } from './due-findings.ts';
import { type EndedStep, endedLines, type SaidLine } from './ended-lines.ts';
import { factsOf } from './job-facts.ts';
import type { JobSource } from './job-source.ts';
import { sourceBefore } from './source-before.ts';

export interface EndOfDay extends DayMoves {
  readonly day: DayFacts;
  readonly said: readonly SaidLine[];
  /** What was moved by an earlier end of the day and is still so; null where nothing was, or it cannot be taken back. */
  readonly takesBack: string | null;
  readonly findings: readonly EndFinding[];
}

export async function readEndOfDay(
  book: BookReader,
  asked: { readonly job: string; readonly date: string; readonly steps: readonly EndedStep[] },
  who: string,
): Promise<Answer<EndOfDay>> {
  const day = await readDay(book, asked);
  if (!day.ok) return day;
  const said = endedLines(day.value.lines, asked.steps);
  if (!said.ok) return said;
  const earlier = await beforeEarlierEnd(book, day.value);
  const { job, pours, turnsOf } = plannedOf(earlier.source);
  const lines = said.value.map(({ line }) => line);
  const movable = lines.filter(({ pour }) => !earlier.kept.includes(pour));
  const moves = dayMoves(movable, { job, pours, times: turnsOf.times }, who);
  const changed = changedSource(earlier.source, moves.changes);
  if (!changed.ok) return changed;
  const after = plannedOf(changed.value);
  return answer({
    ...moves,
    day: day.value,
    said: said.value,
    takesBack: earlier.takesBack,
    findings: [
      ...earlier.kept.map((pour) => keptFinding(pour, asked.date)),
      ...lines.flatMap((line) => dueFindings(line, after.job, after.turnsOf.turns)),
    ],
  });
}

function plannedOf(source: JobSource) {
  const { job, pours, designs, planning } = factsOf(source);
  return { job, pours, turnsOf: turnsFromPours(job, pours, designs, planning.pourFacts) };
}

interface EarlierEnd {
  readonly source: JobSource;
  readonly takesBack: string | null;
  /** Pours that an earlier end moved and somebody has changed since: they stay as they are. */
  readonly kept: readonly string[];
}

async function beforeEarlierEnd(book: BookReader, { facts, report }: DayFacts): Promise<EarlierEnd> {
  const { source } = facts;
  const none = { source, takesBack: null, kept: [] };
  const id = report?.entry.applied ?? null;
  if (id === null) return none;
  const applied = (await book.jobEntries(facts.job.code, 'applied-change')).find((each) => each.id === id);
  if (applied === undefined || applied.entry.takenBackAt !== null) return none;
  const before = sourceBefore(source, applied.entry.before);
  return before.changedSince.length > 0
    ? { ...none, kept: before.pours }
    : { source: before.source, takesBack: id, kept: [] };
}

function keptFinding(pour: string, date: string): EndFinding {
  return {
    rule: 'changed-since',
    severity: 'caution',
    message: `${pour} was changed after ${date} was ended first: it stays where it is now.`,
    where: pour,
  };
}
