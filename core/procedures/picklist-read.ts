// What to take from which place for a design, for a pour as its plan has it, or for a note.
import { z } from 'zod';
import { refuse, type Answer, answer } from '../answer.ts';
import type { PickFor } from '../yard/pick-id.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { readPickList, shownPickList } from './shown-pick-list.ts';

const input = z.strictObject({
  job: z.exactOptional(code),
  /** One of the three. */
  design: z.exactOptional(code),
  pour: z.exactOptional(code),
  note: z.exactOptional(z.string().min(1).max(64)),
  /** Of a pour: one side alone. */
  side: z.exactOptional(z.enum(['A', 'B'])),
  /** Take from this place and the containers that stand there alone. */
  from: z.exactOptional(code),
  now: z.exactOptional(instant),
});

export const picklistRead = query({
  name: 'picklist.read',
  input,
  output: shownPickList,
  run: async (book, asked) => {
    const picked = pickFor(asked);
    return picked.ok
      ? readPickList(book, { picked: picked.value, from: asked.from ?? null }, asked.now)
      : picked;
  },
});

function pickFor({ job, design, pour, note, side }: z.output<typeof input>): Answer<PickFor> {
  const given = [design, pour, note].filter((each) => each !== undefined);
  if (given.length !== 1)
    return refuse('one-of-three', 'A pick list is for a design, for a pour or for a note.', {
      field: 'design',
      hint: 'Maybe give only one of them.',
    });
  if (design !== undefined) return answer({ of: 'design', design });
  if (note !== undefined) return answer({ of: 'note', note });
  if (pour === undefined || job === undefined)
    return refuse('job-needed', `The pour ${pour ?? ''} needs its job.`, { field: 'job' });
  return answer({ of: 'pour', job, pour, side: side ?? null });
}
