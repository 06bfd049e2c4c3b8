// Fills a wall in a thread beside: long work must not hold up the calls of a window.
import { Worker } from 'node:worker_threads';
import type { Answer } from '../answer.ts';
import type { WallAnswer, WallTask } from '../face/wall.ts';

/** The same file in the sources and, under its other ending, in what was built. */
const program = new URL(
  import.meta.url.endsWith('.ts') ? 'wall-worker.ts' : 'wall-worker.mjs',
  import.meta.url,
);

export function wallBeside(task: WallTask): Promise<Answer<WallAnswer>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(program, { workerData: task });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`The filling thread ended with ${code} and no answer.`)));
  });
}
