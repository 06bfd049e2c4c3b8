// By what a movement was booked, as a link to it where it has a screen of its own.
import type { ReactNode } from 'react';
import { never } from '../../../core/answer.ts';
import type { MovementRow } from './yard-words.ts';

const words = { note: 'note', ticket: 'ticket', count: 'count', repair: 'repair' } as const;

/** "ticket 14"; the note number typed on a slip where no paper of the book stands behind it. */
export function paperText(row: Pick<MovementRow, 'paperName' | 'noteNumber'>): string {
  if (row.paperName === null) return row.noteNumber ?? '';
  const { kind, number } = row.paperName;
  return number === null ? words[kind] : `${words[kind]} ${number}`;
}

/** Where the paper is looked at; null where there is none. */
export function paperAddress(row: Pick<MovementRow, 'paperName' | 'paper'>): string | null {
  if (row.paperName === null || row.paper === null) return null;
  const id = encodeURIComponent(row.paper);
  switch (row.paperName.kind) {
    case 'note':
      return `#/yard/papers/${id}`;
    case 'ticket':
      return `#/yard/strip/${id}`;
    case 'count':
      return `#/yard/counts/${id}`;
    case 'repair':
      return '#/yard/condition';
    default:
      return never(row.paperName.kind);
  }
}

export function PaperLink(props: { readonly row: MovementRow }): ReactNode {
  const address = paperAddress(props.row);
  const text = paperText(props.row);
  if (address === null) return text;
  return (
    <a href={address} onClick={(event) => event.stopPropagation()}>
      {text}
    </a>
  );
}
