// Why the gang of a turn comes as it does and goes where it goes: every other way that is worth weighing, planned anew
// with that way fixed, and what it would cost; and the nearest that cannot be, with what stands in their way.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { fixedChoice } from '../plan/choices.ts';
import { decisionAt } from '../plan/why/why.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { query } from './procedure.ts';
import { code, hours, instant } from './shapes.ts';
import { shownDecision, whyQuestion } from './shown-why.ts';

/** A way a gang comes or goes; `pour`, `side` and `design` are those at the other end, null where there is none. */
const way = {
  choice: fixedChoice,
  how: z.enum(['assemble', 'built', 'fly-on', 'regang', 'break-down', 'no-regang']),
  pour: code.nullable(),
  side: z.enum(['A', 'B']).nullable(),
  design: code.nullable(),
  /** The two designs have the same pieces and are made for different hands. */
  otherHand: z.boolean(),
};

export const alternative = z.strictObject({
  ...way,
  /** Hours of work that a re-gang takes, and clock hours between the strip and the next setting. */
  regangH: hours,
  gapH: z.number(),
  /** So much more the whole plan costs with it. */
  costCents: z.int(),
  /** So many more pieces are short for a day that cannot be hired. */
  unmetMore: z.int(),
  /** Components of which more (or, below zero, fewer) are short than by the plan, at the worst moment. */
  shortfalls: z.array(z.strictObject({ component: code, more: z.int(), from: instant })),
  /** Told instructions that the plan with it changes. */
  toldChanged: z.int(),
});

const decision = z.strictObject({
  side: z.enum(['arrival', 'departure']),
  /** With cost 0. */
  chosen: alternative,
  /** What a person fixed here. */
  fixed: z.array(fixedChoice),
  told: z.boolean(),
  alternatives: z.array(alternative),
  barred: z.array(
    z.strictObject({
      ...way,
      barrier: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('still-standing'), hours: z.number() }),
        z.strictObject({ kind: z.literal('too-little-time'), neededH: z.number(), thereH: z.number() }),
        z.strictObject({ kind: z.literal('no-common-piece') }),
        z.strictObject({ kind: z.literal('fixed-otherwise') }),
      ]),
    }),
  ),
  /** Ways there are besides, each dearer by what is known beforehand, that were not planned. */
  others: z.int(),
});

export const planWhy = query({
  name: 'plan.why',
  input: z.strictObject({ job: code, turn: z.string(), now: instant.optional() }),
  output: z.strictObject({
    turn: z.string(),
    pour: code,
    design: code,
    currency: z.string(),
    arrival: decision,
    departure: decision,
  }),
  run: async (book, { job: jobCode, turn, now }) => {
    const facts = await readJobFacts(book, jobCode, now);
    if (!facts.ok) return facts;
    const planned = planJob(facts.value);
    if (!planned.ok) return planned;
    const plan = planned.value;
    const question = whyQuestion(plan);
    const arrival = decisionAt(question, turn, 'arrival', howMany);
    if (!arrival.ok) return arrival;
    const departure = decisionAt(question, turn, 'departure', howMany);
    if (!departure.ok) return departure;
    const own = plan.turnsOf.turns.find(({ id }) => id === turn);
    return answer({
      turn,
      pour: own?.pour ?? '',
      design: own?.design ?? '',
      currency: facts.value.job.currency,
      arrival: shownDecision(plan, arrival.value),
      departure: shownDecision(plan, departure.value),
    });
  },
});

/** For each of the two: a dozen or so in all, and quick enough to be asked while looking. */
const howMany = { planned: 5, withApart: true, barred: 2 };
