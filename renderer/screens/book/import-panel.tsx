// Importing: the kinds in their order, the files chosen for them, what each would change, and every row that
// cannot be read with its line, its column, what was read and what was wanted.
import type { ReactNode } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { type ImportKind, importSteps } from './import-steps.ts';
import { type ImportFile, type ImportResult, type Imports, useImport } from './use-import.ts';

type BadCell = ImportResult['bad'][number];

const badColumns: readonly Column<BadCell>[] = [
  { id: 'line', header: 'Line', value: (cell) => cell.line, numeric: true, width: 56 },
  { id: 'column', header: 'Column', value: (cell) => cell.column, width: 150 },
  {
    id: 'read',
    header: 'Read',
    value: (cell) => cell.read,
    show: (cell) => (cell.read === '' ? <span className="soft">nothing</span> : cell.read),
    width: 190,
  },
  { id: 'wanted', header: 'Wanted', value: (cell) => cell.wanted, width: 640 },
];

export function ImportPanel(props: { readonly readOnly: boolean }): ReactNode {
  const imports = useImport();
  const { current } = imports;
  return (
    <section className="book-part" aria-label="Import">
      <h2>Import CSV files</h2>
      <p className="soft">
        In this order, since each builds on those before it. A file is taken in whole or not at all.
      </p>
      <div className="import-choose">
        <FileTrigger
          allowsMultiple
          acceptedFileTypes={['.csv', 'text/csv', '.txt']}
          onSelect={(list) => imports.add([...(list ?? [])])}
        >
          <Button className="primary" isDisabled={props.readOnly || imports.busy}>
            Choose files …
          </Button>
        </FileTrigger>
        <span className="soft">one or several; the name of a file says which kind it is</span>
      </div>
      <table className="plain import-steps">
        <thead>
          <tr>
            <th scope="col">Kind</th>
            <th scope="col">Holds</th>
            <th scope="col">File</th>
            <th scope="col">State</th>
          </tr>
        </thead>
        <tbody>
          {importSteps.map((step) => {
            const files = imports.files.filter((file) => file.kind === step.kind);
            return (
              <tr key={step.kind} className={current?.kind === step.kind ? 'current' : undefined}>
                <th scope="row">{step.name}</th>
                <td className="soft">{step.holds}</td>
                <td>{files.map((file) => file.name).join(', ')}</td>
                <td>{files.map((file) => stateWords(file)).join(', ')}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {current === undefined ? null : <CurrentFile file={current} imports={imports} />}
      {current === undefined && imports.files.length > 0 ? (
        <p className="import-done">
          <b>All {imports.files.length} files are in the book.</b> <a href="#/board">Open the board</a>
        </p>
      ) : null}
    </section>
  );
}

function stateWords(file: ImportFile): string {
  if (file.taken !== null) return `in the book: ${countWords(file.taken)}`;
  if (file.error !== null) return 'refused';
  if (file.tried === null) return 'waiting';
  return file.tried.bad.length === 0 ? `${countWords(file.tried)}, not yet taken in` : badWords(file.tried);
}

function countWords(result: ImportResult): string {
  const parts = [result.rows === 1 ? '1 row' : `${result.rows} rows`];
  if (result.added > 0) parts.push(`${result.added} new`);
  if (result.changed > 0) parts.push(`${result.changed} changed`);
  return parts.join(', ');
}

function badWords(result: ImportResult): string {
  return result.bad.length === 1 ? '1 bad cell' : `${result.bad.length} bad cells`;
}

function CurrentFile(props: { readonly file: ImportFile; readonly imports: Imports }): ReactNode {
  const { file, imports } = props;
  const result = file.tried;
  return (
    <div className="import-current">
      <div className="import-line">
        <b>{file.name}</b>
        <label>
          <span className="soft">holds </span>
          <select
            value={file.kind}
            onChange={(event) => imports.setKind(file.id, event.target.value as ImportKind)}
          >
            {importSteps.map((step) => (
              <option key={step.kind} value={step.kind}>
                {step.name.toLowerCase()}
              </option>
            ))}
          </select>
        </label>
        {result === null || result.bad.length > 0 ? (
          <Button isDisabled={imports.busy} onPress={() => imports.attempt(file)}>
            Look it through
          </Button>
        ) : (
          <Button className="primary" isDisabled={imports.busy} onPress={() => imports.take(file)}>
            Take in {countWords(result)}
          </Button>
        )}
        <Button isDisabled={imports.busy} onPress={() => imports.drop(file.id)}>
          Leave it out
        </Button>
      </div>
      {file.error === null ? null : <RefusalNote error={file.error} />}
      {result === null || result.bad.length === 0 ? null : (
        <>
          <p>
            <span className="short-word">{badWords(result)}</span> in {result.rows} rows: nothing of this file
            is taken in. Mend these in the file and choose it again.
          </p>
          <div className="import-bad">
            <DataTable
              caption={`Bad cells of ${file.name}`}
              columns={badColumns}
              rows={result.bad}
              rowKey={badKey}
              filterLabel="Filter"
            />
          </div>
        </>
      )}
    </div>
  );
}

function badKey(cell: BadCell): string {
  return `${cell.line}|${cell.column}|${cell.read}|${cell.wanted}`;
}
