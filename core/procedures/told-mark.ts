// Tells the crew what the plan of this moment has them do in the next shifts. From now on that stays as it is unless
// something else saves more than the change costs.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { instruction } from '../plan/choices.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { readToldFacts } from './told-facts.ts';

export const toldMark = command({
  name: 'told.mark',
  input: z.strictObject({ commandId, job: code, now: instant.optional() }),
  output: z.strictObject({ job: code, until: instant, told: z.array(instruction) }),
  run: async (book, { commandId: id, job, now }, { at, who }) => {
    const read = await readToldFacts(book, job, now);
    if (!read.ok) return read;
    const { until, next, plan } = read.value;
    const { toldShifts } = plan.facts.planning.settings;
    if (next.length === 0)
      return refuse('nothing-to-tell', `Until ${until} there is nothing that was not told already.`, {
        field: 'now',
        hint:
          toldShifts === 0
            ? 'Maybe more than 0 shifts are to count as told: the settings of the plan say how many.'
            : 'Maybe the next work is later: the settings of the plan say how many shifts are told.',
      });
    const instructions = next.map((each) => each.instruction);
    const entry = { at: now ?? at, who, until, instructions, released: [] };
    await book.putJobEntry({ job, kind: 'telling', id }, entry);
    return answer({ job, until, told: instructions });
  },
});
