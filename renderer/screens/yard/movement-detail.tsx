// One entry in full, and its reversal: the entry itself stays as it was written.
import { type ReactNode, useState } from 'react';
import { useCommand } from '../../client/core.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import { useEscape } from '../../parts/use-escape.ts';
import { conditionText, type LedgerLinks } from './movement-columns.tsx';
import { PaperLink } from './paper-link.tsx';
import { basisWords, type MovementRow, reasonWords } from './yard-words.ts';

export function MovementDetail(props: {
  readonly row: MovementRow;
  readonly links: LedgerLinks;
  readonly onClose: () => void;
}): ReactNode {
  const { row } = props;
  const words = useTimeWords();
  useEscape(props.onClose);
  const facts: readonly (readonly [string, ReactNode])[] = [
    ['Pieces', `${row.quantity} ${row.component}, ${row.name}`],
    ['Of', row.owner],
    ['From → to', `${row.from} → ${row.to}`],
    ['Condition', conditionText(row)],
    ['Happened', words.full(row.at)],
    ['Booked', `${words.full(row.recordedAt)} by ${row.who}`],
    [
      'Paper',
      row.paper === null ? null : (
        <>
          <PaperLink row={row} />{' '}
          <a href={`#/yard?show=movements&paper=${encodeURIComponent(row.paper)}`}>all that it booked</a>
        </>
      ),
    ],
    ['Note', row.noteNumber],
    ['Remark', row.remark],
    ['Figure', basisWords(row) === '' ? null : basisWords(row)],
  ];
  return (
    <section className="movement-detail" aria-label={`Entry no. ${row.number}`}>
      <div className="side-head">
        <h2>
          No. {row.number}: {reasonWords[row.reason]}
        </h2>
        <button type="button" className="quiet" onClick={props.onClose}>
          Close <kbd>Esc</kbd>
        </button>
      </div>
      <dl className="detail-facts">
        {facts.map(([label, value]) =>
          value === null ? null : (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ),
        )}
      </dl>
      <Reversal row={row} links={props.links} />
    </section>
  );
}

function Reversal(props: { readonly row: MovementRow; readonly links: LedgerLinks }): ReactNode {
  const { row, links } = props;
  const [remark, setRemark] = useState('');
  // Made once an entry: pressed twice, it is one reversal.
  const [id] = useState(() => crypto.randomUUID());
  const reverse = useCommand('yard.reverse');
  const other = row.reversedBy ?? row.reverses;
  if (other !== null) {
    const number = links.numbers.get(other);
    const what = row.reversedBy === null ? 'It reverses' : 'It was reversed by';
    return (
      <p className="reversal-words">
        {what}{' '}
        {number === undefined ? (
          'an entry on another page.'
        ) : (
          <button type="button" className="link" onClick={() => links.onGo(other)}>
            no. {number}
          </button>
        )}
      </p>
    );
  }
  return (
    <form
      className="reversal"
      onSubmit={(event) => {
        event.preventDefault();
        reverse.mutate({ movement: row.id, id, remark: remark.trim() });
      }}
    >
      <label className="field">
        <span className="field-label">Reverse it, because</span>
        <input value={remark} maxLength={400} required onChange={(event) => setRemark(event.target.value)} />
      </label>
      <button type="submit" disabled={reverse.isPending || remark.trim() === ''}>
        Reverse no. {row.number}
      </button>
      <p className="soft">The entry stays as written; its opposite is booked beside it.</p>
      {reverse.error === null ? null : <RefusalNote error={reverse.error} />}
    </form>
  );
}
