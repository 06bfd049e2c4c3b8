// Beside the quantities of a component: what is due in and out by the drafts of notes, what the plan holds at its peak
// in the two weeks from now, and by how many the ready pieces are below that.
import type { ReactNode } from 'react';
import { groupDigits } from '../../../core/units/weight.ts';
import type { Output } from '../../client/core.tsx';
import type { Column } from '../../parts/data-table.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import type { StockGroup } from './yard-groups.ts';

export type SummaryRow = Output<'yard.summary'>['rows'][number];
type Due = SummaryRow['dueIn'];

export function summaryColumns(
  summary: ReadonlyMap<string, SummaryRow>,
  words: TimeWords,
): readonly Column<StockGroup>[] {
  const of = (group: StockGroup): SummaryRow | undefined => summary.get(group.key);
  return [
    dueColumn('due-in', 'Due in', (group) => of(group)?.dueIn, words),
    dueColumn('due-out', 'Due out', (group) => of(group)?.dueOut, words),
    {
      id: 'need',
      header: 'Need',
      numeric: true,
      value: (group) => of(group)?.need ?? 0,
      show: (group) => some(of(group)?.need),
      width: 72,
    },
    {
      id: 'below',
      header: 'Below need',
      numeric: true,
      value: (group) => of(group)?.below ?? 0,
      show: (group) => belowWords(of(group)?.below ?? 0),
      width: 96,
    },
  ];
}

function dueColumn(
  id: string,
  header: string,
  of: (group: StockGroup) => Due | undefined,
  words: TimeWords,
): Column<StockGroup> {
  const dayOf = (due: Due | undefined): string =>
    due === undefined || due.at === null ? '' : words.full(due.at);
  return {
    id,
    header,
    numeric: true,
    value: (group) => of(group)?.quantity ?? 0,
    show: (group) => (
      <>
        {some(of(group)?.quantity)} <span className="soft">{dayOf(of(group))}</span>
      </>
    ),
    text: (group) => `${of(group)?.quantity ?? 0} ${dayOf(of(group))}`.trim(),
    width: 130,
  };
}

function some(count: number | null | undefined): string {
  return count === undefined || count === null || count === 0 ? '' : groupDigits(String(count));
}

function belowWords(below: number): ReactNode {
  return below === 0 ? '' : <strong className="below-need">{groupDigits(String(below))} short</strong>;
}
