// A thread that makes one plan and ends: a search of many seconds must not hold up the calls of a window.
import { parentPort, workerData } from 'node:worker_threads';
import type { PlanInput } from '../plan/contract.ts';
import { improveReuse } from '../plan/mip/improve-reuse.ts';
import { planSolver } from '../procedures/plan-solver.ts';

const plan = improveReuse(workerData as PlanInput, await planSolver(), { nowMs: () => performance.now() });
// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
parentPort?.postMessage(plan);
