// How long the core takes for what the board asks, in this process and without a door between.
import path from 'node:path';
import { createHost } from '../../core/host/host.ts';
import { backUpBook, openBookFile } from '../../core/host/open-book-file.ts';
import { refuse } from '../../core/answer.ts';
import { median } from './reference-work.ts';

export interface CallTimes {
  readonly firstBoard: number;
  readonly board: number;
  readonly whatif: number;
  readonly curve: number;
}

const rounds = 9;

/** Milliseconds. Each what-if is another move, so that its plan is really made. */
export async function callTimes(file: string, job: string): Promise<CallTimes> {
  const host = createHost({
    door: 'local',
    folder: path.dirname(file),
    version: '0.0.0',
    context: () => ({ at: '2026-02-20T16:00:00-05:00', who: 'bench' }),
    openFile: openBookFile,
    backUp: backUpBook,
    makeDemo: () => Promise.resolve(refuse('no-demo', 'No demo here.')),
    checkOutput: false,
    log: (line) => console.error(line),
  });
  const timed = async (name: string, input: Record<string, unknown>): Promise<number> => {
    const started = performance.now();
    const answered = await host.call(name, input);
    if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`);
    return performance.now() - started;
  };
  try {
    await timed('host.open', { file });
    return {
      firstBoard: await timed('board.read', { job }),
      board: await manyTimes(() => timed('board.read', { job })),
      whatif: await manyTimes((round) =>
        timed('plan.whatif', { job, moves: [{ pour: 'L030', workingDays: round }] }),
      ),
      curve: await manyTimes(() => timed('curve.read', { job, component: 'LK' })),
    };
  } finally {
    await host.close();
  }
}

/** The median of several, the first left out. */
async function manyTimes(ask: (round: number) => Promise<number>): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round <= rounds; round += 1) times.push(await ask(round + 1));
  return median(times.slice(1));
}
