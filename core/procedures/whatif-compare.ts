// Two plans of a job side by side: as it stands, a kept what-if, or changes that were just typed. Nothing is stored.
import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { type PlanChange, planChange } from '../plan/plan-changes.ts';
import { asData } from './as-data.ts';
import { changedSource } from './changed-source.ts';
import { factsOf } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { type JobSource, readJobSource } from './job-source.ts';
import { unknownWhatif } from './kept-whatif.ts';
import { type Compared, comparedOf, differenceOf, planDifference } from './plan-difference.ts';
import { planSummary, summaryOf } from './plan-summary.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

const side = z.union([
  z.literal('now'),
  z.strictObject({ kept: z.string() }),
  z.strictObject({ changes: z.array(planChange).min(1).max(60) }),
]);
type Side = z.output<typeof side>;

const shownSide = z.strictObject({
  /** Of a kept what-if. */
  kept: z.string().nullable(),
  name: z.string().nullable(),
  /** None where it is the plan as it stands. */
  changes: z.array(planChange),
  summary: planSummary,
});

export const whatifCompare = query({
  name: 'whatif.compare',
  input: z.strictObject({ job: code, one: side, other: side, now: instant.optional() }),
  output: z.strictObject({
    one: shownSide,
    other: shownSide,
    /** The most that is short of each component at once; 0 where nothing is. */
    components: z.array(z.strictObject({ component: code, name: z.string(), one: z.int(), other: z.int() })),
    /** From the one to the other. */
    ...planDifference,
  }),
  run: async (book, { job, one, other, now }) => {
    const source = await readJobSource(book, job, now);
    if (!source.ok) return source;
    const sides = await Promise.all([readSide(book, job, one, 'one'), readSide(book, job, other, 'other')]);
    const [first, second] = sides;
    if (!first.ok) return first;
    if (!second.ok) return second;
    const before = planned(source.value, first.value, 'one');
    if (!before.ok) return before;
    const after = planned(source.value, second.value, 'other');
    if (!after.ok) return after;
    // What leads from the one to the other is known only where the one is the plan as it stands.
    const changes = first.value.changes.length === 0 ? second.value.changes : [];
    return answer({
      one: shown(first.value, before.value),
      other: shown(second.value, after.value),
      components: shortOf(before.value, after.value),
      ...differenceOf(before.value, after.value, changes),
    });
  },
});

interface ReadSide {
  readonly kept: string | null;
  readonly name: string | null;
  readonly changes: readonly PlanChange[];
}

async function readSide(
  book: BookReader,
  job: string,
  wanted: Side,
  field: string,
): Promise<Answer<ReadSide>> {
  if (wanted === 'now') return answer({ kept: null, name: null, changes: [] });
  if ('changes' in wanted) return answer({ kept: null, name: null, changes: wanted.changes });
  const kept = (await book.jobEntries(job, 'kept-what-if')).find(({ id }) => id === wanted.kept);
  if (kept === undefined) return unknownWhatif(wanted.kept, job, field);
  return answer({ kept: kept.id, name: kept.entry.name, changes: kept.entry.changes });
}

function planned(source: JobSource, { changes }: ReadSide, field: string): Answer<Compared> {
  const changed = changedSource(source, changes);
  if (!changed.ok) return { ok: false, error: { ...changed.error, field } };
  const plan = planJob(factsOf(changed.value));
  return plan.ok ? answer(comparedOf(plan.value)) : plan;
}

function shown({ kept, name, changes }: ReadSide, compared: Compared) {
  return { kept, name, changes: changes.map((each) => asData(each)), summary: summaryOf(compared) };
}

function shortOf({ shown: one }: Compared, { shown: other }: Compared) {
  const names = new Map([...one.shortfalls, ...other.shortfalls].map((each) => [each.component, each.name]));
  return [...names]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([component, name]) => ({
      component,
      name,
      one: most(one, component),
      other: most(other, component),
    }));
}

function most(of: Compared['shown'], component: string): number {
  return Math.max(
    0,
    ...of.shortfalls.filter((each) => each.component === component).map((each) => each.quantity),
  );
}
