// Why a component is short: the gangs and loose pieces that hold it at the first moment, what for, and what the gangs could
// do otherwise. Whether pieces can be got is another question (the ways out of the shortfall).
import { z } from 'zod';
import { answer } from '../answer.ts';
import { whyShort } from '../plan/why/why-short.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { alternative } from './plan-why.ts';
import { query } from './procedure.ts';
import { code, instant, shortfall } from './shapes.ts';
import { shownShortfalls } from './shown-plan.ts';
import { shownAlternative, whyQuestion } from './shown-why.ts';

export const shortfallWhy = query({
  name: 'shortfall.why',
  input: z.strictObject({ job: code, component: code, from: instant, now: instant.optional() }),
  output: z.strictObject({
    shortfall,
    currency: z.string(),
    /** Those that hold most first; like gangs of one pour that do the same are one line. */
    gangs: z.array(
      z.strictObject({
        turns: z.array(z.string()),
        pour: code,
        design: code,
        pieces: z.int(),
        doing: z.enum(['assembled', 'made-into', 'stands', 'waits', 'taken-apart']),
        until: instant,
        nextPour: code.nullable(),
        /** What one of them could do otherwise, and how many are then short at most while it lasts. */
        otherwise: z.strictObject({ ...alternative.shape, shortThen: z.int() }).nullable(),
      }),
    ),
  }),
  run: async (book, { job: jobCode, component, from, now }) => {
    const facts = await readJobFacts(book, jobCode, now);
    if (!facts.ok) return facts;
    const planned = planJob(facts.value);
    if (!planned.ok) return planned;
    const plan = planned.value;
    const why = whyShort({ ...whyQuestion(plan), component, from });
    if (!why.ok) return why;
    const shown = shownShortfalls(plan).find((each) => each.id === `${component}@${from}`);
    if (shown === undefined) throw new Error(`The plan has no shortfall ${component}@${from}`);
    const turns = new Map(plan.turnsOf.turns.map((turn) => [turn.id, turn]));
    return answer({
      shortfall: shown,
      currency: facts.value.job.currency,
      gangs: why.value.map(({ turns: ids, pieces, doing, until, next, otherwise }) => {
        const own = turns.get(ids[0] ?? '');
        const side = doing === 'assembled' || doing === 'made-into' ? 'arrival' : 'departure';
        return {
          turns: [...ids],
          pour: own?.pour ?? '',
          design: own?.design ?? '',
          pieces,
          doing,
          until,
          nextPour: next === null ? null : (turns.get(next)?.pour ?? null),
          otherwise:
            otherwise === null
              ? null
              : {
                  ...shownAlternative(plan, otherwise.alternative, side),
                  shortThen: otherwise.shortThen,
                },
        };
      }),
    });
  },
});
