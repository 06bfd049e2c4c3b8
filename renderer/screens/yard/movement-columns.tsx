// Columns of the ledger. An entry that was reversed is struck through and names the entry that took it
// back; that one names what it reverses.
import type { ReactNode } from 'react';
import { groupDigits } from '../../../core/units/weight.ts';
import type { Column } from '../../parts/data-table.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { PaperLink, paperText } from './paper-link.tsx';
import { basisWords, conditionWords, type MovementRow, reasonWords } from './yard-words.ts';

export interface LedgerLinks {
  /** Numbers of the entries at hand, by their ids. */
  readonly numbers: ReadonlyMap<string, number>;
  readonly onGo: (id: string) => void;
}

/** @param year of the job's plan: entries of another one say theirs */
export function movementColumns(
  words: TimeWords,
  links: LedgerLinks,
  brief: boolean,
  year: string,
): readonly Column<MovementRow>[] {
  const all: readonly (Column<MovementRow> & { readonly brief?: number })[] = [
    { id: 'number', header: 'No.', numeric: true, value: (row) => row.number, width: 70, brief: 72 },
    {
      id: 'at',
      header: 'When',
      value: (row) => Date.parse(row.at),
      show: (row) => whenWords(row.at, words, year),
      text: (row) => whenWords(row.at, words, year),
      width: 146,
      brief: 146,
    },
    {
      id: 'reason',
      header: 'Reason',
      value: (row) => reasonWords[row.reason],
      show: (row) => (
        <>
          <span className="entry">{reasonWords[row.reason]}</span>
          <ReversalLink row={row} links={links} />
        </>
      ),
      text: (row) => `${reasonWords[row.reason]} ${reversalText(row, links)}`,
      width: 190,
      brief: 156,
    },
    ...(brief ? [] : [componentColumn, nameColumn]),
    {
      id: 'quantity',
      header: 'Pieces',
      numeric: true,
      value: (row) => row.quantity,
      show: (row) => <span className="entry">{groupDigits(String(row.quantity))}</span>,
      width: 82,
      brief: 62,
    },
    {
      id: 'places',
      header: 'From → to',
      value: (row) => `${row.from} → ${row.to}`,
      show: (row) => <span className="entry">{`${row.from} → ${row.to}`}</span>,
      width: 170,
      brief: 146,
    },
    { id: 'condition', header: 'Condition', value: conditionText, width: 150 },
    { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 80 },
    {
      id: 'note',
      header: 'Paper',
      value: paperText,
      show: (row) => <PaperLink row={row} />,
      width: 92,
    },
    { id: 'who', header: 'Who', value: (row) => row.who, width: 100 },
    { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 220 },
    { id: 'basis', header: 'Basis', value: basisWords, width: 150, hidden: true },
  ];
  return all.map(({ brief: width, ...column }) => {
    if (!brief) return column;
    return width === undefined ? { ...column, hidden: true } : { ...column, width };
  });
}

/** "Mon 9 Mar 18:04"; of another year "9 Mar 2024 18:04". */
export function whenWords(at: string, words: TimeWords, year: string): string {
  const own = words.date(at).slice(0, 4);
  if (own === year) return words.full(at);
  return `${words.day(at).replace(/^\w+ /u, '')} ${own} ${words.time(at)}`;
}

const componentColumn: Column<MovementRow> = {
  id: 'component',
  header: 'Component',
  value: (row) => row.component,
  show: (row) => <span className="entry">{row.component}</span>,
  width: 104,
};

const nameColumn: Column<MovementRow> = { id: 'name', header: 'Name', value: (row) => row.name, width: 180 };

/** "ready", or "ready → to clean" where it changed on the way. */
export function conditionText(row: MovementRow): string {
  const [before, after] = [conditionWords[row.condition], conditionWords[row.conditionAfter]];
  return before === after ? before : `${before} → ${after}`;
}

function entryName(id: string, links: LedgerLinks): string {
  const number = links.numbers.get(id);
  return number === undefined ? 'another entry' : `no. ${number}`;
}

function reversalText(row: MovementRow, links: LedgerLinks): string {
  if (row.reversedBy !== null) return `reversed by ${entryName(row.reversedBy, links)}`;
  if (row.reverses !== null) return `of ${entryName(row.reverses, links)}`;
  return '';
}

function ReversalLink(props: { readonly row: MovementRow; readonly links: LedgerLinks }): ReactNode {
  const { row, links } = props;
  const other = row.reversedBy ?? row.reverses;
  if (other === null) return null;
  const text = reversalText(row, links);
  if (!links.numbers.has(other)) return <span className="soft"> {text}</span>;
  return (
    <button
      type="button"
      className="link"
      onClick={(event) => {
        event.stopPropagation();
        links.onGo(other);
      }}
    >
      {text}
    </button>
  );
}

export function movementClass(row: MovementRow): string | undefined {
  return row.reversedBy === null ? undefined : 'reversed';
}
