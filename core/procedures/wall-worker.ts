// A thread that fills one wall and ends: the solver blocks the thread it runs in, and a window's calls must go on.
import { parentPort, workerData } from 'node:worker_threads';
import { fillWall } from '../face/fill-wall.ts';
import type { WallTask } from '../face/wall.ts';
import { wholeSolver } from './solve-whole.ts';

const task = workerData as WallTask;
// Without a stock nothing can be short, and nobody is asked.
const solve = task.stock === null ? null : await wholeSolver();
// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
parentPort?.postMessage(fillWall(task, solve));
