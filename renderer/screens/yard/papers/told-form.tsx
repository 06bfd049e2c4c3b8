// What the depot says it counted of a return: entered once, beside our figure. Where the two differ, a claim stays open.
import { type ReactNode, useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { RefusalNote } from '../../../parts/notes.tsx';
import { FieldError } from '../field.tsx';
import { readPieces } from './note-draft.ts';
import type { Note } from './note-words.ts';

export function ToldForm(given: { readonly note: Note }): ReactNode {
  const { note } = given;
  const told = useCommand('note.told');
  const [texts, setTexts] = useState<readonly string[]>(() => note.lines.map(() => ''));
  const [tried, setTried] = useState(false);
  const read = texts.map((text, index) =>
    text.trim() === '' ? null : readPieces(text, note.lines[index]?.component ?? ''),
  );
  const wrong = read.map((each) => (each !== null && !each.ok ? each.error.message : null));
  const nothing = read.every((each) => each === null);
  const wordsAt = (index: number): string | null => (tried ? (wrong[index] ?? null) : null);
  return (
    <form
      className="told"
      aria-label="What the depot counted"
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (nothing || wrong.some((each) => each !== null) || told.isPending) return;
        told.mutate({
          note: note.id,
          countedThere: read.map((each) => (each?.ok === true ? each.value : null)),
        });
      }}
    >
      <h2>What the depot counted</h2>
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">Component</th>
            <th scope="col" className="numeric">
              Loaded
            </th>
            <th scope="col" className="numeric">
              Depot
            </th>
          </tr>
        </thead>
        <tbody>
          {note.lines.map((line, index) => (
            <tr key={index}>
              <td>
                {line.component} <span className="soft">{line.owner}</span>
                {wordsAt(index) === null ? null : (
                  <FieldError error={{ line: index, field: 'there', message: wordsAt(index) ?? '' }} />
                )}
              </td>
              <td className="numeric">{line.counted ?? ''}</td>
              <td className="numeric">
                <input
                  className="quantity"
                  aria-label={`Depot counted of ${line.component}, line ${index + 1}`}
                  aria-invalid={wordsAt(index) !== null}
                  value={texts[index] ?? ''}
                  onChange={(event) =>
                    setTexts(texts.map((text, at) => (at === index ? event.target.value : text)))
                  }
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="slip-end">
        <button type="submit" aria-disabled={told.isPending}>
          Enter it once
        </button>
        <output>{tried && nothing ? 'Nothing is entered yet.' : ''}</output>
      </div>
      {told.error === null ? null : <RefusalNote error={told.error} />}
    </form>
  );
}
