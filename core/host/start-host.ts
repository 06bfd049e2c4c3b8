// The host as every real door starts it: the platform's folder, the clock, the user, the log.
import path from 'node:path';
import manifest from '../../package.json' with { type: 'json' };
import type { HostState } from './book-session.ts';
import { doorContext } from './door-context.ts';
import { dataFolder } from './folders.ts';
import { createHost } from './host.ts';
import type { Host } from './host.ts';
import { backUpBook, openBookFile } from './open-book-file.ts';

export function startHost(door: HostState['door']): Host {
  return createHost({
    door,
    folder: dataFolder(),
    version: manifest.version,
    context: doorContext,
    openFile: openBookFile,
    backUp: backUpBook,
    makeDemo: async (file, context) => (await import('../../seed-demo/make-demo.ts')).makeDemo(file, context),
    checkOutput: process.env['REGANG_CHECK_OUTPUT'] === '1',
    log: (line) => console.error(`regang: ${line}`),
    phonePages,
  });
}

/** Built beside the core where that was built too. */
const phonePages = path.join(
  import.meta.dirname,
  ...(import.meta.url.endsWith('.ts') ? ['..', '..', 'dist'] : ['..']),
  'renderer-phone',
);
