// A repair by its id, and the refusals of one that somebody else has changed or closed meanwhile.
import { answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import type { RepairJob } from '../yard/repair-job.ts';

/** Codes: unknown-repair, repair-done, repair-dropped, repair-changed. */
export async function openRepair(book: BookReader, id: string, version: number) {
  const repair = (await book.repairs()).find((each) => each.id === id);
  if (repair === undefined)
    return refuse('unknown-repair', `There is no repair ${id} in this book.`, { field: 'repair' });
  if (repair.state !== 'open') return repairClosed(repair);
  return repair.version === version ? answer(repair) : repairChanged(repair);
}

export function repairClosed({ state, quantity, component, place }: RepairJob) {
  return refuse(
    `repair-${state}`,
    `The repair of ${quantity} ${component} at ${place} is ${state} already.`,
    { field: 'repair', hint: 'Maybe somebody else was quicker; nothing was booked a second time.' },
  );
}

export function repairChanged({ quantity, component, place, version }: RepairJob) {
  return refuse(
    'repair-changed',
    `The repair of ${quantity} ${component} at ${place} was changed by somebody else; it is version ${version} now.`,
    { field: 'version', hint: 'Maybe look at it again, and enter yours once more.' },
  );
}
