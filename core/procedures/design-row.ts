// A design typed as rows, such as 36 36 24 36 | 8+4.
import { z } from 'zod';
import { catalogueSystem } from '../book/systems.ts';
import { designGeometry } from '../gang/design.ts';
import { typedRow } from '../gang/typed-row.ts';
import { answer } from '../answer.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';

export const designRow = query({
  name: 'design.row',
  input: z.strictObject({ system: code, text: z.string().max(4000), units: z.enum(['us', 'metric']) }),
  /** From (0, 0); its edges are open. */
  output: z.strictObject({ geometry: designGeometry }),
  run: async (book, { system: systemCode, text, units }) => {
    const system = catalogueSystem(systemCode, await book.components());
    if (!system.ok) return system;
    const typed = typedRow(system.value, text, units);
    return typed.ok ? answer({ geometry: typed.value }) : typed;
  },
});
