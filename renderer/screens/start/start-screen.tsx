// The first start: the demo job, or an empty book for one's own files, or a book used before.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import type { HostOutput } from '../../client/core.tsx';
import { type BookFile, useBookFile, useMenu } from '../../parts/book-file.ts';
import { CautionLine, RefusalNote } from '../../parts/notes.tsx';
import { PathEntry } from '../../parts/path-entry.tsx';
import { Patterns } from '../../parts/patterns.tsx';
import { ReadingFigure } from './reading-figure.tsx';
import '../../style/board-marks.css';
import '../../style/start.css';

export function StartScreen(props: { readonly host: HostOutput<'host.state'> }): ReactNode {
  const { host } = props;
  const file = useBookFile();
  useMenu();
  return (
    <div className="start">
      <Patterns />
      <main>
        <h1>Regang</h1>
        <p className="start-lead">
          Which gang goes where after each strip, and what will be short, days before it is.
        </p>
        <ReadingFigure />
        {file.error === null ? null : <RefusalNote error={file.error} />}
        <div className="start-ways">
          <section>
            <h2>Open the demo job</h2>
            <p>
              An invented treatment works: 27 pours in eight weeks, a yard, a panel system with its rule
              tables. Move its pours, break its plan, begin it again.
            </p>
            <Button className="primary" isDisabled={file.busy} onPress={file.demo}>
              {file.busy ? 'Opening …' : 'Open the demo job'}
            </Button>
          </section>
          <section>
            <h2>Bring your own files</h2>
            <p>
              A new book, then your CSV files one after another: components, rule tables, places, jobs, stock,
              designs, pours. Every bad row is named before anything is taken in.
            </p>
            <OwnFiles file={file} />
          </section>
        </div>
        <Recent host={host} file={file} />
      </main>
      <CautionLine />
    </div>
  );
}

function OwnFiles(props: { readonly file: BookFile }): ReactNode {
  const { file } = props;
  if (file.asksItself) {
    return (
      <Button isDisabled={file.busy} onPress={() => file.begin()}>
        Begin a new book …
      </Button>
    );
  }
  return (
    <PathEntry
      label="Name of the new book"
      begin="my-job"
      action="Begin a new book"
      busy={file.busy}
      onPath={file.begin}
    />
  );
}

function Recent(props: { readonly host: HostOutput<'host.state'>; readonly file: BookFile }): ReactNode {
  const { host, file } = props;
  return (
    <section className="start-recent">
      <h2>Books</h2>
      {host.recent.length === 0 ? (
        <p className="soft">None opened here yet. New books go to {host.folder}.</p>
      ) : null}
      <ul>
        {host.recent.map((book) => (
          <li key={book.file}>
            <Button className="quiet" isDisabled={file.busy} onPress={() => file.open(book.file)}>
              <b>{book.name}</b> <span className="soft">{book.file}</span>
            </Button>
          </li>
        ))}
      </ul>
      {file.asksItself ? (
        <Button isDisabled={file.busy} onPress={() => file.open()}>
          Open another book …
        </Button>
      ) : (
        <PathEntry label="Path of another book" begin="" action="Open" busy={file.busy} onPath={file.open} />
      )}
    </section>
  );
}
