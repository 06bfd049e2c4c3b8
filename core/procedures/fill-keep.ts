// Keeps the new designs of a proposal, all of them or none.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { command } from './procedure.ts';
import { saveDesign, savedDesign } from './save-design.ts';
import { code, commandId } from './shapes.ts';

export const fillKeep = command({
  name: 'fill.keep',
  input: z.strictObject({ commandId, designs: z.array(savedDesign).min(1).max(100) }),
  output: z.strictObject({ kept: z.array(z.strictObject({ code, number: z.int() })) }),
  run: async (book, { designs }) => {
    const kept: { code: string; number: number }[] = [];
    for (const [index, design] of designs.entries()) {
      const saved = await saveDesign(book, design, true);
      if (!saved.ok) {
        const field = `designs[${index}]${saved.error.field === undefined ? '' : `.${saved.error.field}`}`;
        return { ok: false, error: { ...saved.error, field } };
      }
      kept.push({ code: design.code, number: saved.value.number });
    }
    return answer({ kept });
  },
});
