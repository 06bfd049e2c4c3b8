// A thread that makes one plan and ends: a search of many seconds must not hold up the calls of a window.
import { parentPort, workerData } from 'node:worker_threads';
import type { PlanInput } from '../plan/contract.ts';
import { planReuse } from '../plan/plan-reuse.ts';

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
parentPort?.postMessage(planReuse(workerData as PlanInput, () => performance.now()));
