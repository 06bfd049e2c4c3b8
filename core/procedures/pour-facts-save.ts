// Saves what is entered of a pour beside its dates and gangs. What approved its strip, and whether it has a date, stay.
import { z } from 'zod';
import { answer, type Answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { jobEntryShapes } from '../plan/job-entries.ts';
import { msOf } from '../plan/local-time.ts';
import { noPourFacts } from './changed-source.ts';
import { readJobPlanning, type JobPlanning, type PourFacts } from './job-planning.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob, unknownPour } from './unknown.ts';

const { hold, reach, standsOn, laidDown } = jobEntryShapes['pour-facts'].shape;
const given = z.strictObject({
  hold: hold.optional(),
  reach: reach.optional(),
  standsOn: standsOn.optional(),
  laidDown: laidDown.optional(),
});
type Given = z.output<typeof given>;

export const pourFactsSave = command({
  name: 'pour.facts.save',
  /** What is left out stays as it is. */
  input: z.strictObject({ commandId, job: code, pour: code, facts: given }),
  output: z.strictObject({ facts: jobEntryShapes['pour-facts'], before: jobEntryShapes['pour-facts'] }),
  run: async (book, { job, pour, facts }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const planning = await readJobPlanning(book, job);
    const allowed = await checkFacts(book, job, pour, facts, planning);
    if (!allowed.ok) return allowed;
    const before = planning.pourFacts.get(pour) ?? noPourFacts;
    const saved = { ...before, ...withoutGaps(facts) };
    await book.putJobEntry({ job, kind: 'pour-facts', id: pour }, saved);
    return answer({ facts: saved, before });
  },
});

function withoutGaps(facts: Given): Partial<PourFacts> {
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined));
}

/** Codes: unknown-pour, hold-over-before, unknown-crane, stands-on-itself. */
async function checkFacts(
  book: BookReader,
  job: string,
  pour: string,
  facts: Given,
  planning: JobPlanning,
): Promise<Answer<null>> {
  const codes = new Set((await book.pours(job)).map((each) => each.code));
  if (!codes.has(pour)) return unknownPour(pour, job);
  const held = facts.hold ?? null;
  if (held !== null && held.until !== null && msOf(held.until) <= msOf(held.since))
    return refuse(
      'hold-over-before',
      `The hold is over at ${held.until}, not after it began at ${held.since}.`,
      {
        field: 'facts.hold.until',
        hint: 'Maybe it is not known until when: then leave it open.',
      },
    );
  const crane = facts.reach?.crane ?? null;
  const known = [
    ...(await book.cranes()).map((each) => each.code),
    ...planning.settings.cranes.map((each) => each.crane),
  ];
  if (crane !== null && !known.includes(crane))
    return refuse('unknown-crane', `There is no crane ${crane}.`, { field: 'facts.reach.crane' });
  return checkCarrier(pour, facts.standsOn?.pour ?? null, codes, planning, job);
}

function checkCarrier(
  pour: string,
  below: string | null,
  codes: ReadonlySet<string>,
  { pourFacts }: JobPlanning,
  job: string,
): Answer<null> {
  if (below !== null && !codes.has(below)) return unknownPour(below, job, 'facts.standsOn.pour');
  const passed: string[] = [pour];
  for (let at = below; at !== null; at = pourFacts.get(at)?.standsOn?.pour ?? null) {
    const isCircle = passed.includes(at);
    passed.push(at);
    if (isCircle)
      return refuse('stands-on-itself', `${pour} would stand on itself: ${passed.join(' on ')}.`, {
        field: 'facts.standsOn.pour',
        hint: 'Maybe the storey below is meant.',
      });
  }
  return answer(null);
}
