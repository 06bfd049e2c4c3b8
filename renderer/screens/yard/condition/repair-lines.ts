// Repairs and pieces that wait for one as rows of one table.
import type { RepairRow, Repairs, WaitingRow } from './care-words.ts';

export interface RepairLine {
  readonly key: string;
  readonly component: string;
  readonly name: string;
  readonly quantity: number;
  readonly owner: string;
  readonly place: string;
  readonly repair: RepairRow | null;
  readonly waiting: WaitingRow | null;
}

/** Those that nobody has in hand first. */
export function repairLines({ repairs, waiting }: Repairs): readonly RepairLine[] {
  return [
    ...waiting.map((row) => ({
      ...row,
      key: `waits ${row.component} ${row.owner} ${row.location}`,
      place: row.location,
      repair: null,
      waiting: row,
    })),
    ...repairs.map((row) => ({ ...row, key: row.id, repair: row, waiting: null })),
  ];
}

/** Open, late, done, dropped, or that nobody has it in hand. */
export function standingWords({ repair }: RepairLine): string {
  if (repair === null) return 'waits';
  if (repair.state !== 'open') return repair.state;
  return repair.late ? 'late' : 'in hand';
}
