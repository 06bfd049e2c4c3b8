// A ticket or a count on the phone: each gang with where it goes in the largest type, then its lines in the order of
// the paper. A line opens at the foot, within reach of a thumb.
import { type ReactNode, useCallback, useState } from 'react';
import { addresses } from '../address.ts';
import type { CountGroup, CountLine } from '../counting/figures.ts';
import { findLine, lineKey, shownGroups } from '../counting/shown.ts';
import type { KeptPaper, Paper } from '../kept/kept.ts';
import { useKept } from '../kept/state.ts';
import { useConnection } from '../sending/connection.ts';
import { readPaper } from '../sending/sender.ts';
import { useEvery } from '../sending/use-every.ts';
import { Head } from './head.tsx';
import { LineRow } from './line-row.tsx';
import { LineSheet } from './line-sheet.tsx';
import { SomethingElse } from './something-else.tsx';

const everyMs = 15_000;
const back = { to: addresses.work, words: 'To count' };

export function CountPaper(props: { readonly paperKey: string }): ReactNode {
  const kept = useKept();
  const connection = useConnection();
  const paper = kept.papers.find(({ key }) => key === props.paperKey);
  const [why, setWhy] = useState<string | null>(null);
  const read = useCallback((): void => {
    void readPaper(paperOfKey(props.paperKey)).then((outcome) =>
      setWhy(outcome.came === 'refused' ? outcome.refusal.message : null),
    );
  }, [props.paperKey]);
  useEvery(read, everyMs);
  if (paper === undefined)
    return (
      <main className="phone-screen">
        <Head title="To count" back={back} />
        <p>
          {why ??
            (connection === 'there' || connection === 'unknown'
              ? 'Reading …'
              : 'It was not opened on this phone before, and there is no connection to read it.')}
        </p>
      </main>
    );
  return <ReadPaper paper={paper} groups={shownGroups(kept, paper)} />;
}

/** An id is made elsewhere, and may hold anything. */
function paperOfKey(key: string): Paper {
  const [, kind, id = '', counter] = /^(ticket|count) (.*?)(?: ([12]))?$/u.exec(key) ?? [];
  return kind === 'count'
    ? { key, kind, id, name: '', counter: counter === '2' ? 2 : 1 }
    : { key, kind: 'ticket', id: key.slice('ticket '.length), name: '', counter: 1 };
}

function ReadPaper(props: { readonly paper: KeptPaper; readonly groups: readonly CountGroup[] }): ReactNode {
  const { paper, groups } = props;
  const [open, setOpen] = useState<string | null>(null);
  const line = open === null ? null : findLine(groups, open);
  const state = paper.kind === 'ticket' ? paper.read.ticket.state : paper.read.count.state;
  const title =
    paper.kind === 'ticket' ? `${paper.name}, pour ${paper.read.ticket.pour}` : `Count ${paper.name}`;
  return (
    <main className="phone-screen">
      <Head title={title} back={back} />
      {state === 'open' ? null : (
        <p className="notice">
          <strong>
            {paper.name} is {state}.
          </strong>{' '}
          Nothing more is taken on it. What is found now belongs on a ticket for late finds.
        </p>
      )}
      {paper.kind === 'ticket' && paper.read.ticket.cleared === null ? (
        <p className="notice">
          <strong>Not cleared for stripping</strong> by anybody in the book. A named person clears each strip.
        </p>
      ) : null}
      {groups.map((group) => (
        <section key={group.group} aria-label={group.title === '' ? group.goes : group.title}>
          <h2 className="goes">{group.goes}</h2>
          {group.title === '' ? null : <p className="group-title">{group.title}</p>}
          <p className="soft">{countedWords(group.lines)}</p>
          <ul className="line-list">
            {group.lines.map((each) => (
              <li key={lineKey(each)}>
                <LineRow line={each} onOpen={() => setOpen(lineKey(each))} />
              </li>
            ))}
          </ul>
          {paper.kind === 'ticket' && state === 'open' ? (
            <SomethingElse paper={paper} group={group.group} onAdded={setOpen} />
          ) : null}
        </section>
      ))}
      <p className="soft">
        Planning aid only.
        {paper.kind === 'ticket'
          ? ' Nobody stands on or under a suspended form; loose pieces are off a gang before it flies.'
          : ''}
      </p>
      {line === null || open === null ? null : (
        <LineSheet
          key={open}
          paper={paper}
          line={line}
          next={nextOf(groups, open)}
          onLine={setOpen}
          onClose={() => setOpen(null)}
        />
      )}
    </main>
  );
}

function countedWords(lines: readonly CountLine[]): string {
  return `${lines.filter(({ isCounted }) => isCounted).length} of ${lines.length} lines counted`;
}

/** The line below on the paper, in the next gang after the last of one. */
function nextOf(groups: readonly CountGroup[], key: string): string | null {
  const keys = groups.flatMap(({ lines }) => lines).map(lineKey);
  return keys[keys.indexOf(key) + 1] ?? null;
}
