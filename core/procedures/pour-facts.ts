// What is entered of a pour beside its dates and gangs: a hold, how far it is from its crane, the storey below that
// carries it, whether its gangs are laid down.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { jobEntryShapes } from '../plan/job-entries.ts';
import { noPourFacts } from './changed-source.ts';
import { findingsOfPour, foundFrom } from './findings-of-pour.ts';
import { readJobFacts } from './job-facts.ts';
import { query } from './procedure.ts';
import { code, finding, instant } from './shapes.ts';
import { unknownPour } from './unknown.ts';

export const pourFacts = query({
  name: 'pour.facts',
  input: z.strictObject({ job: code, pour: code, now: instant.optional() }),
  output: z.strictObject({
    pour: code,
    facts: jobEntryShapes['pour-facts'],
    /** From which a hold would begin. */
    now: instant,
    /** Whether gangs are laid down where the pour says nothing. */
    laidDownByJob: z.boolean(),
    cranes: z.array(z.strictObject({ crane: code, name: z.string() })),
    pours: z.array(z.strictObject({ pour: code, name: z.string() })),
    findings: z.array(finding),
  }),
  run: async (book, { job, pour: asked, now }) => {
    const read = await readJobFacts(book, job, now);
    if (!read.ok) return read;
    const { planning, source } = read.value;
    const pour = source.pours.find((each) => each.code === asked);
    if (pour === undefined) return unknownPour(asked, job);
    return answer({
      pour: asked,
      facts: planning.pourFacts.get(asked) ?? noPourFacts,
      now: read.value.yard.now,
      laidDownByJob: planning.settings.laidDown,
      cranes: source.cranes.map(({ code: crane, name }) => ({ crane, name })),
      pours: source.pours
        .filter((each) => each.code !== asked)
        .map(({ code: of, name }) => ({ pour: of, name })),
      findings: findingsOfPour(foundFrom(read.value), pour),
    });
  },
});
