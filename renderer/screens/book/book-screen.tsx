// The book itself: which file it is, other books, a copy, whether all is well in it, and importing.
import type { ReactNode } from 'react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { type HostOutput, type Output, useCore } from '../../client/core.tsx';
import { type BookFile, useBookFile } from '../../parts/book-file.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import { PathEntry } from '../../parts/path-entry.tsx';
import { ImportPanel } from './import-panel.tsx';
import '../../style/book.css';

export function BookScreen(props: {
  readonly host: HostOutput<'host.state'>;
  readonly state: Output<'book.state'>;
}): ReactNode {
  const { host, state } = props;
  const file = useBookFile();
  const readOnly = host.book?.readOnly === true;
  return (
    <div className="screen book-screen">
      <header className="screen-head">
        <h1>{host.book?.name ?? 'No book'}</h1>
        <span className="soft">{host.book?.file}</span>
      </header>
      {readOnly ? (
        <p className="note note-caution">
          <span className="note-word">Read only</span> Another app has this book open for writing. Nothing can
          be changed here until it is closed there.
        </p>
      ) : null}
      {file.error === null ? null : <RefusalNote error={file.error} />}
      <p className="book-counts">
        {[
          `${state.jobs.length} ${state.jobs.length === 1 ? 'job' : 'jobs'}`,
          `${state.components} components`,
          `${state.designs} designs`,
          `${state.movements} movements`,
          `change ${state.changeNumber}`,
        ].join(' · ')}
      </p>
      {state.jobs.length === 0 ? (
        <p className="book-empty">
          This book has no job yet. Bring your files below: the board opens as soon as jobs and pours are in.
        </p>
      ) : null}
      <ImportPanel readOnly={readOnly} />
      <CheckPart />
      <FilePart file={file} host={host} />
    </div>
  );
}

function CheckPart(): ReactNode {
  const [asked, setAsked] = useState(false);
  const check = useCore('book.check', {}, { enabled: asked });
  return (
    <section className="book-part" aria-label="Check">
      <h2>Check</h2>
      <p className="soft">
        Whether the file is whole, every reference has its other end, and the ledger balances for each
        component and owner.
      </p>
      <Button
        isDisabled={check.isFetching}
        onPress={() => {
          if (asked) void check.refetch();
          setAsked(true);
        }}
      >
        {check.isFetching ? 'Checking …' : 'Check the book'}
      </Button>
      {check.error === null ? null : <RefusalNote error={check.error} />}
      {check.data === undefined || check.isFetching ? null : (
        <output className="check-result">
          {check.data.problems.length === 0 ? (
            <>
              <b>Nothing wrong found.</b> {check.data.movements} movements of {check.data.components}{' '}
              components looked at.
            </>
          ) : (
            <>
              <span className="short-word">{check.data.problems.length} problems</span>
              {check.data.problems.map((problem) => (
                <span key={problem.message} className="check-problem">
                  <b>{problem.check}</b> {problem.message}
                </span>
              ))}
            </>
          )}
        </output>
      )}
    </section>
  );
}

function FilePart(props: { readonly file: BookFile; readonly host: HostOutput<'host.state'> }): ReactNode {
  const { file, host } = props;
  const others = host.recent.filter((book) => book.file !== host.book?.file);
  return (
    <section className="book-part" aria-label="File">
      <h2>File</h2>
      {file.asksItself ? (
        <div className="book-buttons">
          <Button isDisabled={file.busy} onPress={() => file.copy()}>
            Write a copy …
          </Button>
          <Button isDisabled={file.busy} onPress={() => file.open()}>
            Open another book …
          </Button>
          <Button isDisabled={file.busy} onPress={() => file.begin()}>
            Begin a new book …
          </Button>
        </div>
      ) : (
        <div className="book-forms">
          <PathEntry
            label="Write a copy to"
            begin=""
            action="Write a copy"
            busy={file.busy}
            onPath={file.copy}
          />
          <PathEntry
            label="Path of another book"
            begin=""
            action="Open"
            busy={file.busy}
            onPath={file.open}
          />
          <PathEntry
            label="Name of a new book"
            begin=""
            action="Begin"
            busy={file.busy}
            onPath={file.begin}
          />
        </div>
      )}
      {file.copied === null ? null : <output className="soft">Copied to {file.copied}</output>}
      <div className="book-buttons">
        {others.map((book) => (
          <Button
            key={book.file}
            className="quiet"
            isDisabled={file.busy}
            onPress={() => file.open(book.file)}
          >
            Open <b>{book.name}</b>
          </Button>
        ))}
        <Button className="quiet" isDisabled={file.busy} onPress={file.demo}>
          Open the demo job
        </Button>
      </div>
    </section>
  );
}
