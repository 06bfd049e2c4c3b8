// Strip tickets, the open ones first, and beside them what the plan strips next: a ticket is one click away.
import { type ReactNode, useMemo } from 'react';
import { useLocation } from 'wouter';
import { useCore } from '../../../client/core.tsx';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { YardTabs } from '../yard-tabs.tsx';
import type { TicketRow } from './asked.ts';
import { NextStrips } from './next-strips.tsx';
import { stateWords } from './strip-words.ts';
import { stripCaution } from './ticket-screen.tsx';
import '../yard.css';
import './strip.css';

export function StripScreen(): ReactNode {
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
      </header>
      <div className="screen-body">
        <div className="pane grow yard-main">
          <Tickets />
        </div>
        <aside className="pane side yard-side strip-side" aria-label="Next strips">
          <NextStrips />
        </aside>
      </div>
      <CautionLine about={stripCaution} />
    </div>
  );
}

function Tickets(): ReactNode {
  const list = useCore('ticket.list', { job: useJob().code });
  const words = useTimeWords();
  const [, navigate] = useLocation();
  const columns = useMemo(() => columnsOf(words), [words]);
  const rows = useMemo(() => openFirst(list.data?.tickets ?? []), [list.data]);
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the strip tickets …" />;
  if (rows.length === 0)
    return (
      <Empty title="No strip ticket yet">
        <p>
          A strip ticket says what should come back from a pour and where each gang goes next. It is counted
          on this screen, on a phone or on paper, and booking it moves everything at once. Make the first one
          from the strips that come next.
        </p>
      </Empty>
    );
  return (
    <DataTable
      caption="Strip tickets, open ones first"
      columns={columns}
      rows={rows}
      rowKey={rowKey}
      onSelect={(row) => navigate(`/yard/strip/${encodeURIComponent(row.id)}`)}
      filterLabel="Filter"
    />
  );
}

function rowKey(row: TicketRow): string {
  return row.id;
}

function openFirst(rows: readonly TicketRow[]): readonly TicketRow[] {
  return [...rows.filter((row) => row.state === 'open'), ...rows.filter((row) => row.state !== 'open')];
}

function columnsOf(words: TimeWords): readonly Column<TicketRow>[] {
  return [
    { id: 'number', header: 'Ticket', value: (row) => row.number, show: (row) => <b>{row.name}</b>, text: (row) => row.name, width: 80 },
    { id: 'pour', header: 'Pour', value: (row) => row.pour, width: 70 },
    { id: 'state', header: 'State', value: (row) => stateWords[row.state], width: 80 },
    { id: 'parts', header: 'Parts', value: (row) => row.parts.map((part) => part.part).join(', '), width: 220 },
    { id: 'plannedAt', header: 'Planned', value: (row) => row.plannedAt, show: (row) => words.full(row.plannedAt), text: (row) => words.full(row.plannedAt), width: 140 },
    { id: 'cleared', header: 'Cleared by', value: (row) => row.cleared?.by ?? (row.follows === null ? 'nobody' : ''), width: 120 },
    { id: 'counted', header: 'Counted', value: (row) => row.counted, show: (row) => `${row.counted} of ${row.expected}`, text: (row) => `${row.counted} of ${row.expected}`, numeric: true, width: 100 },
    { id: 'missing', header: 'Missing', value: (row) => row.missing ?? -1, show: (row) => row.missing ?? '', numeric: true, width: 80 },
    { id: 'booked', header: 'Booked', value: (row) => row.booked?.at ?? '', show: (row) => (row.booked === null ? '' : `${words.full(row.booked.at)} by ${row.booked.who}`), text: (row) => (row.booked === null ? '' : `${words.full(row.booked.at)} by ${row.booked.who}`), width: 200 },
    { id: 'follows', header: 'Late finds of', value: (row) => row.follows?.name ?? '', width: 100 },
    { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 140 },
  ]; // prettier-ignore
}
