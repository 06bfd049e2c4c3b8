// The pours of a job as entered, with the instants that follow and what is wrong with them.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { instantText } from '../plan/local-time.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { areaM2 } from '../units/area.ts';
import { asData } from './as-data.ts';
import { byCode, found } from './by-code.ts';
import { findingsOfPour } from './findings-of-pour.ts';
import { readDesignFacts } from './design-facts.ts';
import { shownTimes } from './shown-times.ts';
import { unknownJob } from './unknown.ts';
import { readWorkingJob } from './working-job.ts';
import { query } from './procedure.ts';
import { code, finding, instant, pour, pourTimes, quantity } from './shapes.ts';

export const pourList = query({
  name: 'pour.list',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    pours: z.array(
      z.strictObject({
        pour,
        /** Nobody has set its day: its dates only say how long it takes, and no plan has it. */
        dateOpen: z.boolean(),
        times: pourTimes,
        /** Entered loose pieces and the ties counted from opposite holes, with the side's set time. */
        loose: z.array(
          z.strictObject({
            component: code,
            quantity,
            purpose: z.string(),
            from: instant,
            counted: z.boolean(),
          }),
        ),
        /** Contact area of both sides in square metres; volume is not known here. */
        areaM2: z.number(),
        findings: z.array(finding),
      }),
    ),
  }),
  run: async (book, { job: jobCode }) => {
    const working = await readWorkingJob(book, jobCode);
    if (working === null) return unknownJob(jobCode);
    const { job, planning } = working;
    const [pours, designs, components, cranes] = await Promise.all([
      book.pours(jobCode),
      readDesignFacts(book),
      book.components(),
      book.cranes(),
    ]);
    if (!designs.ok) return designs;
    const open = new Set([...planning.pourFacts].flatMap(([id, { dateOpen }]) => (dateOpen ? [id] : [])));
    const dated = pours.filter((each) => !open.has(each.code));
    const { times, loose } = turnsFromPours(job, pours, designs.value, planning.pourFacts);
    const known = {
      job,
      pours: dated,
      designs: designs.value,
      planning,
      components: byCode(components),
      cranes,
    };
    return answer({
      pours: pours.map((each) => ({
        pour: asData(each),
        dateOpen: open.has(each.code),
        times: shownTimes(found(times, each.code), job),
        loose: loose
          .filter((line) => line.pour === each.code)
          .map(({ component, quantity: pieces, purpose, counted, from }) => ({
            component,
            quantity: pieces,
            purpose,
            counted,
            from: instantText(from, job.timeZone),
          })),
        areaM2: each.sides
          .flatMap((side) => side.gangs)
          .reduce((sum, gang) => sum + areaM2(found(designs.value, gang.design).takeOff.areaNm2), 0),
        findings: findingsOfPour(known, each).filter(
          ({ rule }) => !open.has(each.code) || !ofDates.has(rule),
        ),
      })),
    });
  },
});

/** Findings that speak of the dates of a pour: nothing to say where it has none. */
const ofDates: ReadonlySet<string> = new Set(['sequence', 'gate-late', 'set-in-shift', 'stands-on']);
