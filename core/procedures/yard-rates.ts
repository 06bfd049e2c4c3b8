// Loss and damage by turn of every component that a job uses, with what they rest on, and the spares that follow from them.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { byCode, found } from './by-code.ts';
import { datedPours } from './dated-pours.ts';
import { readDesignFacts } from './design-facts.ts';
import { jobSpares } from './job-spares.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownJob } from './unknown.ts';
import { readWorkingJob } from './working-job.ts';

const usedRate = z.discriminatedUnion('basis', [
  /** Lost and damaged, of the pieces that came back from turns. */
  z.strictObject({ basis: z.literal('own'), worn: z.int(), of: z.int() }),
  z.strictObject({ basis: z.literal('default'), millionths: z.int() }),
  z.strictObject({ basis: z.literal('default-per-set') }),
  z.strictObject({ basis: z.literal('none') }),
]);

export const yardRates = query({
  name: 'yard.rates',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    /** Whether plans keep the spares back. */
    keepSpares: z.boolean(),
    turnsForOwnRate: z.int(),
    rates: z.array(
      z.strictObject({
        component: code,
        name: z.string(),
        kind: z.string(),
        turns: z.int(),
        pieces: z.int(),
        lost: z.int(),
        damaged: z.int(),
        used: usedRate,
        /** The most pieces that the job's turns hold at once, and the pours at which they stand then at most. */
        mostHeld: z.int(),
        mostPours: z.int(),
        spare: z.int(),
      }),
    ),
  }),
  run: async (book, { job: jobCode }) => {
    const working = await readWorkingJob(book, jobCode);
    if (working === null) return unknownJob(jobCode);
    const [all, designs, components, settings, tickets, counts] = await Promise.all([
      book.pours(jobCode),
      readDesignFacts(book),
      book.components(),
      book.yardSettings(),
      book.tickets({ state: 'booked' }),
      book.counts({ state: 'booked' }),
    ]);
    if (!designs.ok) return designs;
    const pours = datedPours(all, working.planning);
    const yard = { tickets, counts, settings };
    const catalogue = byCode(components);
    return answer({
      keepSpares: settings.keepSpares,
      turnsForOwnRate: settings.turnsForOwnRate,
      rates: jobSpares({ ...working, pours, designs: designs.value, components, yard }).map(
        ({ component, rate, most, spare, of }) => ({
          component,
          name: found(catalogue, component).name,
          kind: found(catalogue, component).kind,
          turns: of.turns,
          pieces: of.pieces,
          lost: of.lost,
          damaged: of.damaged,
          used: rate,
          mostHeld: most.pieces,
          mostPours: most.pours,
          spare,
        }),
      ),
    });
  },
});
