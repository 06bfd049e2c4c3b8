// The yard by component: what is ready and what is not, what is due in and out, and how far the ready pieces are below
// what the plan of a job holds at its peak in the two weeks from now.
import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { curvesOf } from '../plan/curves.ts';
import { instantText, msOf } from '../plan/local-time.ts';
import { momentMs } from '../yard/moment.ts';
import { bases } from '../yard/movement.ts';
import { peakBetween, yardSummary } from '../yard/yard-summary.ts';
import { byCode, found } from './by-code.ts';
import { readJobFacts, type JobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { query } from './procedure.ts';
import { code, date, instant } from './shapes.ts';

const looksAheadMs = 14 * 86_400_000;

const due = z.strictObject({ quantity: z.int(), at: instant.nullable() });

export const yardSummaryRow = z.strictObject({
  component: code,
  name: z.string(),
  ready: z.int(),
  toClean: z.int(),
  toRepair: z.int(),
  quarantine: z.int(),
  scrapped: z.int(),
  /** At another job or out for repair. */
  away: z.int(),
  /** Found with us and belonging to others. */
  notOurs: z.int(),
  /** By drafts of notes: how many, and when the first of them. */
  dueIn: due,
  dueOut: due,
  /** The most that the plan holds at once in the two weeks; null without a job. */
  need: z.int().nullable(),
  below: z.int().nullable(),
  /** What the quantities rest on at their weakest, and its date. */
  oldestFigure: z.strictObject({ basis: z.enum(bases), date: date.nullable(), old: z.boolean() }).nullable(),
});

export const yardSummaryQuery = query({
  name: 'yard.summary',
  input: z.strictObject({ job: code.optional(), now: instant.optional() }),
  output: z.strictObject({
    /** Between which moments the plan was looked at; null without a job. */
    from: instant.nullable(),
    to: instant.nullable(),
    rows: z.array(yardSummaryRow),
  }),
  run: async (book, { job, now }) => {
    const needed = job === undefined ? answer(null) : await needsOf(book, job, now);
    if (!needed.ok) return needed;
    const [stock, components, locations, owners, drafts] = await Promise.all([
      book.stock(now),
      book.components(),
      book.locations(),
      book.owners(),
      book.notes({ state: 'draft' }),
    ]);
    const rows = yardSummary({
      stock,
      locations,
      owners,
      drafts,
      needs: needed.value?.needs ?? null,
      earlier: (one, other) => (momentMs(one) ?? 0) < (momentMs(other) ?? 0),
    });
    const catalogue = byCode(components);
    return answer({
      from: needed.value?.from ?? null,
      to: needed.value?.to ?? null,
      rows: rows.map((row) => {
        const figure = needed.value?.facts.figures.get(row.component);
        return {
          ...row,
          name: found(catalogue, row.component).name,
          oldestFigure:
            figure === undefined ? null : { basis: figure.basis, date: figure.date, old: figure.isOld },
        };
      }),
    });
  },
});

interface Needs {
  readonly facts: JobFacts;
  readonly needs: ReadonlyMap<string, number>;
  readonly from: string;
  readonly to: string;
}

async function needsOf(book: BookReader, job: string, now: string | undefined): Promise<Answer<Needs>> {
  const facts = await readJobFacts(book, job, now);
  if (!facts.ok) return facts;
  const plan = planJob(facts.value);
  if (!plan.ok) return plan;
  const curves = curvesOf(plan.value.input, plan.value.answer.runs);
  if (!curves.ok) return curves;
  const { nowMs, now: from } = facts.value.yard;
  const needs = curves.value.map(({ component, demandHeldByPlan }): [string, number] => {
    const steps = demandHeldByPlan.map((step) => ({ fromMs: msOf(step.from), quantity: step.quantity }));
    return [component, peakBetween(steps, nowMs, nowMs + looksAheadMs)];
  });
  const to = instantText(nowMs + looksAheadMs, facts.value.job.timeZone);
  return answer({ facts: facts.value, needs: new Map(needs), from, to });
}
