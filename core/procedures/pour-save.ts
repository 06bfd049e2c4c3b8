// Adds a pour or replaces one of the same code, as a whole. Refused where it contradicts itself.
import { z } from 'zod';
import { command } from './procedure.ts';
import { code, commandId, pour } from './shapes.ts';

export const pourSave = command({
  name: 'pour.save',
  input: z.strictObject({ commandId, job: code, pour }),
  output: z.strictObject({ pour, added: z.boolean() }),
  run: () => Promise.reject(new Error('being built')),
});
