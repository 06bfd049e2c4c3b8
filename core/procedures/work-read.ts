// Crew, crane and pads of a job day by day: what is asked for by which step and by whose rate, the crane's picks hour by
// hour between other bookings, who lies on the ground, and the overloads.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { jobEntryShapes } from '../plan/job-entries.ts';
import { labourRate, labourSteps } from '../plan/planning-settings.ts';
import { pickKinds } from '../plan/work/picks.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { query } from './procedure.ts';
import { code, date, finding, instant } from './shapes.ts';
import { shownWorkDays } from './shown-work-days.ts';
import { overloadShape, shownOverload } from './work-shapes.ts';
import { jobWork } from './job-work.ts';
import { workFindings } from './work-findings.ts';

const stretch = z.strictObject({ from: instant, to: instant });

export const workDay = z.strictObject({
  date,
  working: z.boolean(),
  shifts: z.array(stretch),
  crew: z.strictObject({
    needed: z.number(),
    there: z.number(),
    steps: z.array(
      z.strictObject({
        step: z.enum(labourSteps),
        pour: code,
        toPour: code.nullable(),
        personHours: z.number(),
        /** Whose rate it is; null: the hours entered, by the whole crew. */
        rate: labourRate.nullable(),
      }),
    ),
  }),
  cranes: z.array(
    z.strictObject({
      crane: code,
      minutesNeeded: z.number(),
      minutesThere: z.number(),
      minutesOver: z.number(),
      free: z.array(stretch),
      picks: z.array(
        z.strictObject({
          /** Null where it does not fit. */
          at: instant.nullable(),
          minutes: z.number(),
          kind: z.enum(pickKinds),
          pour: code,
          toPour: code.nullable(),
          design: code.nullable(),
        }),
      ),
    }),
  ),
  pads: z
    .strictObject({
      needed: z.int(),
      there: z.int(),
      over: z.int(),
      lying: z.array(z.strictObject({ use: z.enum(['assemble', 'clean']), turn: z.string(), pour: code })),
    })
    .nullable(),
  overloads: z.array(z.string()),
});

export const workRead = query({
  name: 'work.read',
  input: z.strictObject({ job: code, now: instant.optional() }),
  output: z.strictObject({
    job: z.strictObject({
      code,
      name: z.string(),
      timeZone: z.string(),
      crew: z.int(),
      currency: z.string(),
    }),
    changeNumber: z.int(),
    days: z.array(workDay),
    overloads: z.array(shownOverload),
    findings: z.array(finding),
    /** All pours, with what is entered of them beside their dates; null where nothing is. */
    pours: z.array(
      z.strictObject({ pour: code, name: z.string(), facts: jobEntryShapes['pour-facts'].nullable() }),
    ),
  }),
  run: async (book, { job, now }) => {
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const { code: of, name, timeZone, crew, currency } = facts.value.job;
    return answer({
      job: { code: of, name, timeZone, crew, currency },
      changeNumber: facts.value.changeNumber,
      days: shownWorkDays(plan.value),
      overloads: jobWork(plan.value).overloads.map(overloadShape),
      findings: workFindings(facts.value),
      pours: facts.value.source.pours.map(({ code: pour, name: called }) => ({
        pour,
        name: called,
        facts: facts.value.planning.pourFacts.get(pour) ?? null,
      })),
    });
  },
});
