// Takes a pour out of a job. Refused while another pour comes after it.
import { z } from 'zod';
import { command } from './procedure.ts';
import { code, commandId, pour } from './shapes.ts';

export const pourRemove = command({
  name: 'pour.remove',
  input: z.strictObject({ commandId, job: code, pour: code }),
  /** The pour as it was, so that it can be put back. */
  output: z.strictObject({ removed: pour }),
  run: () => Promise.reject(new Error('being built')),
});
