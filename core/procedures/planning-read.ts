// What a job sets for its planning, as it stands; where nothing was entered, what planning begins with.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { planningSettings } from '../plan/planning-settings.ts';
import { readJobPlanning } from './job-planning.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const planningRead = query({
  name: 'planning.read',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    settings: planningSettings,
    /** False where these are the figures that planning begins with. */
    entered: z.boolean(),
    crew: z.int(),
    units: z.enum(['us', 'metric']),
    timeZone: z.string(),
    currency: z.string(),
    /** Cranes of the book, which have a chart. */
    cranes: z.array(z.strictObject({ crane: code, name: z.string() })),
  }),
  run: async (book, { job: asked }) => {
    const job = await book.job(asked);
    if (job === null) return unknownJob(asked);
    const [planning, entries, cranes] = await Promise.all([
      readJobPlanning(book, asked),
      book.jobEntries(asked, 'settings'),
      book.cranes(),
    ]);
    return answer({
      settings: planning.settings,
      entered: entries.length > 0,
      crew: job.crew,
      units: job.units,
      timeZone: job.timeZone,
      currency: job.currency,
      cranes: cranes.map(({ code: crane, name }) => ({ crane, name })),
    });
  },
});
