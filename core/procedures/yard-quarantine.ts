// Sets pieces apart, and takes them back: with a reason each time, since nobody may use them meanwhile.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import type { Condition } from '../yard/movement.ts';
import { command } from './procedure.ts';
import { code, commandId, instant, quantity } from './shapes.ts';

/** In which condition they were, or are then. Scrap goes its own way, with a second name. */
const condition = z.enum(['ready', 'ready-hidden', 'to-clean', 'to-repair']);

export const yardQuarantine = command({
  name: 'yard.quarantine',
  input: z.strictObject({
    commandId,
    way: z.enum(['in', 'out']),
    component: code,
    owner: code,
    location: code,
    quantity,
    condition,
    why: z.string().trim().max(400),
    at: instant,
  }),
  output: z.strictObject({ movement: z.string() }),
  run: async (book, input, { at: recordedAt, who }) => {
    const { way, component, owner, location, quantity: pieces, why, at } = input;
    if (why === '')
      return refuse(
        'no-reason',
        `${pieces} of ${component} would be set apart or taken back without a reason.`,
        {
          field: 'why',
          hint: 'Maybe say what is to be looked at, or what was found.',
        },
      );
    const id = `${input.commandId}-1`;
    const apart: Condition = 'quarantine';
    const [before, after] = way === 'in' ? [input.condition, apart] : [apart, input.condition];
    await book.appendMovements(
      [
        {
          id,
          component,
          quantity: pieces,
          owner,
          from: location,
          to: location,
          condition: before,
          conditionAfter: after,
          reason: 'quarantine',
          at,
          who,
          noteNumber: null,
          remark: why,
          basis: null,
          basisDate: null,
          reverses: null,
          paper: null,
        },
      ],
      recordedAt,
    );
    return answer({ movement: id });
  },
});
