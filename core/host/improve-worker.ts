// A thread that looks for a better plan and says what it has found. It is stopped by being ended: what it said last stands.
import { parentPort, workerData } from 'node:worker_threads';
import type { PlanInput } from '../plan/contract.ts';
import { improveSearch } from './improve-search.ts';

const { input, seconds } = workerData as { readonly input: PlanInput; readonly seconds: number };
await improveSearch(
  input,
  seconds,
  () => performance.now(),
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
  (plan) => parentPort?.postMessage(plan),
);
