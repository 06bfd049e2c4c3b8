// The options of `npm start` and `npm run demo`, read once.
import { parseArgs } from 'node:util';
import { answer, refuse } from '../core/answer.ts';
import type { Answer } from '../core/answer.ts';

export interface StartOptions {
  /** Open the demo job, making it where it is not there yet. */
  readonly demo: boolean;
  readonly book: string | null;
  /** The local door even where the desktop could start. */
  readonly local: boolean;
  readonly port: number;
  /** Print the local address only, and start no browser. */
  readonly noOpen: boolean;
  /** Keep the local door open after its last page is gone. */
  readonly stay: boolean;
}

export const startUsage = 'npm start -- [--demo | --book FILE] [--local [--port N] [--no-open] [--stay]]';

export function readStartOptions(args: readonly string[]): Answer<StartOptions> {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        demo: { type: 'boolean', default: false },
        book: { type: 'string' },
        local: { type: 'boolean', default: false },
        port: { type: 'string', default: '0' },
        'no-open': { type: 'boolean', default: false },
        stay: { type: 'boolean', default: false },
      },
    });
    const port = Number(values.port);
    if (!/^\d{1,5}$/u.test(values.port) || port > 65_535)
      return refuse('bad-option', `--port: read "${values.port}", wanted a number from 0 to 65535.`, {
        field: 'port',
      });
    if (values.demo && values.book !== undefined)
      return refuse('bad-option', '--demo and --book cannot be given together.', { field: 'book' });
    const { demo, local, stay } = values;
    return answer({ demo, book: values.book ?? null, local, port, noOpen: values['no-open'], stay });
  } catch (error) {
    return refuse('bad-option', error instanceof Error ? error.message : String(error), { hint: startUsage });
  }
}
