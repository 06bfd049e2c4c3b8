// What stands told to the crew, whether the plan of this moment does it, and what would be told next.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { instruction } from '../plan/choices.ts';
import { instantText } from '../plan/local-time.ts';
import { choiceTurns, turnsOfChoice } from './choice-shapes.ts';
import { isThere } from './job-plan-input.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { changedTold } from './shown-plan.ts';
import { readTellings, readToldFacts, textOf } from './told-facts.ts';

const row = {
  instruction,
  ...choiceTurns,
  /** Between which it is worked on by this plan; null where the plan does otherwise. */
  workFrom: instant.nullable(),
  workTo: instant.nullable(),
};

export const toldList = query({
  name: 'told.list',
  input: z.strictObject({ job: code, now: instant.optional() }),
  output: z.strictObject({
    job: code,
    /** The end of the last shift that counts as told. */
    until: instant,
    toldShifts: z.int(),
    changeCents: z.int(),
    stands: z.array(
      z.strictObject({
        ...row,
        /** `gone`: a turn that it speaks of is not in the plan any more. */
        standing: z.enum(['followed', 'changed', 'gone']),
        since: instant,
        who: z.string(),
      }),
    ),
    changed: z.int(),
    next: z.array(z.strictObject(row)),
  }),
  run: async (book, { job, now }) => {
    const read = await readToldFacts(book, job, now);
    if (!read.ok) return read;
    const { plan, planned, until, next } = read.value;
    const { planning, job: of } = plan.facts;
    const tellings = await readTellings(book, job);
    const works = new Map(planned.map((each) => [textOf(each.instruction), each]));
    const turns = new Set(plan.turnsOf.turns.map(({ id }) => id));
    const changed = changedTold(plan);
    const shown = (told: (typeof planning.told)[number]) => {
      const work = works.get(textOf(told));
      return {
        instruction: told,
        ...turnsOfChoice(plan, told),
        workFrom: work === undefined ? null : instantText(work.from, of.timeZone),
        workTo: work === undefined ? null : instantText(work.to, of.timeZone),
      };
    };
    return answer({
      job,
      until,
      toldShifts: planning.settings.toldShifts,
      changeCents: planning.settings.changeCents,
      stands: planning.told.map((told) => {
        const { at: since, who } = tellings.get(textOf(told)) ?? { at: plan.facts.yard.now, who: '' };
        const standing = works.has(textOf(told)) ? ('followed' as const) : ('changed' as const);
        return {
          ...shown(told),
          standing: isThere(told, turns) ? standing : ('gone' as const),
          since,
          who,
        };
      }),
      changed: changed.length,
      next: next.map((each) => shown(each.instruction)),
    });
  },
});
