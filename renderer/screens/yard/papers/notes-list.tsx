// The notes in the order in which a yard looks at them; late ones stand above the table, each with a field for its
// new day.
import { type ReactNode, useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { useCore } from '../../../client/core.tsx';
import { DataTable, type Column } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { type Units, useUnits } from '../../../parts/units.tsx';
import { LateNotes } from './late-notes.tsx';
import { inLookingOrder, noteAddress, noteKindWords, type NoteRow, standingWord } from './note-words.ts';

export function NotesList(): ReactNode {
  const list = useCore('note.list', {});
  const words = useTimeWords();
  const units = useUnits();
  const [, navigate] = useLocation();
  const columns = useMemo(() => columnsOf(words, units), [words, units]);
  const rows = useMemo(() => inLookingOrder(list.data?.notes ?? []), [list.data]);
  const late = useMemo(() => rows.filter((row) => row.late), [rows]);
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the notes …" />;
  if (rows.length === 0)
    return (
      <Empty title="No note yet">
        <p>
          A note goes with pieces from place to place. Written before the truck comes, its day counts in the
          plan; what is counted at the truck is what is booked, and every difference stays open as a claim.
        </p>
        <p>
          <Link href="/yard/papers/new?kind=delivery">Write a delivery that is due</Link> ·{' '}
          <Link href="/yard/papers/new?kind=return">Write a return</Link>
        </p>
      </Empty>
    );
  return (
    <div className="pane grow yard-main">
      {late.length === 0 ? null : <LateNotes rows={late} />}
      <DataTable
        caption="Notes: late ones, those that are due, drafts, booked"
        columns={columns}
        rows={rows}
        rowKey={rowKey}
        onSelect={(row: NoteRow) => navigate(noteAddress(row.id))}
        filterLabel="Filter"
        rowClass={(row) => (row.late ? 'late-note' : undefined)}
      />
    </div>
  );
}

function rowKey(row: NoteRow): string {
  return row.id;
}

function columnsOf(words: TimeWords, units: Units): readonly Column<NoteRow>[] {
  return [
    {
      id: 'number',
      header: 'Note',
      value: (row) => row.number,
      show: (row) => <b>{row.number}</b>,
      width: 100,
    },
    { id: 'kind', header: 'Kind', value: (row) => noteKindWords[row.kind], width: 90 },
    {
      id: 'standing',
      header: 'State',
      value: standingWord,
      show: (row) =>
        row.late ? <b className="short-word">{standingWord(row)}</b> : <span>{standingWord(row)}</span>,
      width: 90,
    },
    {
      id: 'due',
      header: 'Due',
      value: (row) => (row.expectedAt === null ? 0 : Date.parse(row.expectedAt)),
      show: (row) => (row.expectedAt === null ? '' : words.full(row.expectedAt)),
      text: (row) => (row.expectedAt === null ? '' : words.full(row.expectedAt)),
      width: 140,
    },
    { id: 'places', header: 'From → to', value: (row) => `${row.from} → ${row.to}`, width: 150 },
    { id: 'lines', header: 'Lines', numeric: true, value: (row) => row.lines, width: 64 },
    { id: 'sent', header: 'On the paper', numeric: true, value: (row) => row.sent, width: 100 },
    {
      id: 'counted',
      header: 'Counted',
      numeric: true,
      value: (row) => row.counted,
      show: (row) => (row.state === 'draft' && row.counted === 0 ? '' : row.counted),
      width: 80,
    },
    {
      id: 'claims',
      header: 'Claims',
      numeric: true,
      value: (row) => row.claims,
      show: (row) => (row.claims === 0 ? '' : <b className="caution-word-ink">{row.claims} open</b>),
      width: 80,
    },
    {
      id: 'weight',
      header: 'Weight',
      numeric: true,
      value: (row) => row.weightGrams,
      show: (row) => units.weight(row.weightGrams),
      text: (row) => units.weight(row.weightGrams),
      width: 96,
    },
    {
      id: 'photos',
      header: 'Photos',
      numeric: true,
      value: (row) => row.attachments,
      show: (row) => (row.attachments === 0 ? '' : row.attachments),
      width: 70,
    },
  ];
}
