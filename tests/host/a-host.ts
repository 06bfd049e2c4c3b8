// A host on real books in a temporary folder, with procedures small enough to see through: one that reads
// the places, one that adds a place, one with a bug, one that answers out of shape.
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { z } from 'zod';
import { answer, refuse } from '../../core/answer.ts';
import { createHost } from '../../core/host/host.ts';
import type { Host, HostOptions } from '../../core/host/host.ts';
import { backUpBook, openBookFile } from '../../core/host/open-book-file.ts';
import { calculation, command, query } from '../../core/procedures/procedure.ts';
import type { Procedure } from '../../core/procedures/procedure.ts';

export const at = '2026-03-02T07:00:00-05:00';

const placeList = query({
  name: 'test.places',
  input: z.strictObject({}),
  output: z.strictObject({ codes: z.array(z.string()) }),
  run: async (book) => answer({ codes: (await book.locations()).map((place) => place.code).sort() }),
});

const placeAdd = command({
  name: 'test.add',
  input: z.strictObject({
    commandId: z.string().min(8),
    code: z.string(),
    kind: z.enum(['yard', 'site']),
    refusing: z.boolean().optional(),
  }),
  output: z.strictObject({ code: z.string(), who: z.string(), at: z.string() }),
  run: async (book, { code, kind, refusing }, context) => {
    await book.putLocation({ code, name: code, kind });
    return refusing === true ? refuse('no', `${code} is not wanted.`) : answer({ code, ...context });
  },
});

const buggy = query({
  name: 'test.bug',
  input: z.strictObject({}),
  output: z.strictObject({}),
  run: () => Promise.reject(new TypeError('nothing is not a number')),
});

const outOfShape = calculation({
  name: 'test.shape',
  input: z.strictObject({}),
  output: z.strictObject({ count: z.int() }),
  run: () => answer({ count: 1.5 }),
});

const testProcedures: Readonly<Record<string, Procedure>> = Object.fromEntries(
  [placeList, placeAdd, buggy, outOfShape].map((each): [string, Procedure] => [each.name, each]),
);

export interface HostAtWork {
  readonly host: Host;
  readonly folder: string;
  readonly logged: readonly string[];
}

export function aHost(changes: Partial<HostOptions> = {}): HostAtWork {
  const folder = changes.folder ?? mkdtempSync(path.join(tmpdir(), 'regang-host-'));
  const logged: string[] = [];
  const host = createHost({
    door: 'local',
    folder,
    version: '0.0.0',
    context: () => ({ at, who: 'tester' }),
    openFile: openBookFile,
    backUp: backUpBook,
    makeDemo: () => Promise.resolve(refuse('no-demo', 'No demo here.')),
    checkOutput: true,
    log: (line) => void logged.push(line),
    procedures: testProcedures,
    ...changes,
  });
  return { host, folder, logged };
}
