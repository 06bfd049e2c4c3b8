// Every state in which a design was saved, oldest first; also of one that was taken out.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { unknownDesign } from './unknown.ts';

export const designRevisions = query({
  name: 'design.revisions',
  input: z.strictObject({ design: code }),
  output: z.strictObject({
    revisions: z.array(
      z.strictObject({
        number: z.int(),
        revision: z.string(),
        name: z.string(),
        system: code,
        hand: z.enum(['left', 'right', 'symmetrical']),
        ruleVersion: z.int(),
        /** Null for what was in the book before states were kept. */
        savedAt: instant.nullable(),
        who: z.string().nullable(),
      }),
    ),
  }),
  run: async (book, { design }) => {
    const states = await book.designRevisions(design);
    if (states.length === 0) return unknownDesign(design);
    return answer({
      revisions: states.map(({ number, revision, name, system, hand, ruleVersion, savedAt, who }) => ({
        number,
        revision,
        name,
        system,
        hand,
        ruleVersion,
        savedAt,
        who,
      })),
    });
  },
});
