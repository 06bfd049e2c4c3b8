// Work by others that a step waits for; ticked when it is done.
import type { ReactNode } from 'react';
import { dateWords } from '../../parts/time-words.ts';
import type { PartProps } from './pour-detail.tsx';

export function GatesPart(props: PartProps): ReactNode {
  const { row, edits } = props;
  const { gates } = row.pour;
  if (gates.length === 0) return <p className="soft">None entered.</p>;
  const open = gates.filter(({ done }) => !done).length;
  return (
    <>
      <ul className="gates">
        {gates.map((gate, index) => (
          <li key={`${gate.name} ${gate.before}`}>
            <label>
              <input
                type="checkbox"
                checked={gate.done}
                disabled={edits.busy}
                onChange={(event) => {
                  const done = event.target.checked;
                  const next = gates.map((one, at) => (at === index ? { ...one, done } : one));
                  void edits.save(
                    row.pour,
                    { ...row.pour, gates: next },
                    `${row.pour.code}: ${gate.name} ${done ? 'done' : 'open again'}`,
                  );
                }}
              />
              <span>
                <strong>{gate.name}</strong>, {gate.who}
                <span className="soft gate-when">
                  {gate.done ? 'done' : 'open'} · before {stepWords[gate.before]} · promised{' '}
                  {dateWords(gate.promised)}
                </span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      {open === 0 ? null : (
        <p className="caution-word-ink">
          Not ready: {open} {open === 1 ? 'gate is' : 'gates are'} open.
        </p>
      )}
    </>
  );
}

const stepWords = { set: 'setting', close: 'closing', pour: 'the pour' } as const;
