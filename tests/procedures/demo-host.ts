// A host on the demo job in a temporary folder, with every answer held against its shape.
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { z } from 'zod';
import { createHost } from '../../core/host/host.ts';
import { hostState } from '../../core/host/host-calls.ts';
import { backUpBook, openBookFile } from '../../core/host/open-book-file.ts';
import type { ProcedureName, Procedures } from '../../core/procedures/all.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';

type In<N extends ProcedureName> = z.input<Procedures[N]['input']>;
type Out<N extends ProcedureName> = z.output<Procedures[N]['output']>;

export interface DemoHost {
  /** The answer, which must be no refusal. */
  readonly ask: <N extends ProcedureName>(name: N, input: In<N>) => Promise<Out<N>>;
  /** The code of a refusal, which the answer must be. */
  readonly refused: <N extends ProcedureName>(name: N, input: In<N>) => Promise<string>;
  /** The book's file. */
  readonly file: string;
  readonly close: () => Promise<void>;
}

export const job = 'TB26';

export async function demoHost(): Promise<DemoHost> {
  const host = createHost({
    door: 'local',
    folder: mkdtempSync(path.join(tmpdir(), 'regang-demo-')),
    version: '0.0.0',
    context: () => ({ at: '2026-02-23T07:00:00-05:00', who: 'tester' }),
    openFile: openBookFile,
    backUp: backUpBook,
    makeDemo,
    checkOutput: true,
    log: (line) => {
      throw new Error(line);
    },
  });
  const made = await host.call('host.demo', {});
  if (!made.ok) throw new Error(made.error.message);
  return {
    ask: async (name, input) => {
      const answered = await host.call(name, input);
      if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`);
      return answered.value as never;
    },
    refused: async (name, input) => {
      const answered = await host.call(name, input);
      if (answered.ok) throw new Error(`${name} was not refused`);
      return answered.error.code;
    },
    file: hostState.parse(made.value).book?.file ?? '',
    close: () => host.close(),
  };
}
