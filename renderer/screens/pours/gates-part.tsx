// Work by others that a step waits for: ticked when it is done, promised again when it slips.
import { type ReactNode, useState } from 'react';
import { dateWords } from '../../parts/time-words.ts';
import { readWhen } from '../../parts/when-text.ts';
import { GateAdd } from './gate-add.tsx';
import { stepWords } from './pour-words.ts';
import type { PartProps } from './pour-detail.tsx';
import type { Gate } from './pour-shapes.ts';

export function GatesPart(props: PartProps): ReactNode {
  const { row, edits } = props;
  const { gates } = row.pour;
  const open = gates.filter(({ done }) => !done).length;
  const change = (index: number, next: Gate | null, words: string): void => {
    void edits.change(
      row.pour.code,
      (pour) => ({ ...pour, gates: pour.gates.flatMap((one, at) => (at === index ? (next ?? []) : one)) }),
      `${row.pour.code}: ${words}`,
    );
  };
  return (
    <>
      {open === 0 ? null : (
        <p className="caution-word-ink">
          Not ready: {open} {open === 1 ? 'gate is' : 'gates are'} open.
        </p>
      )}
      <ul className="gates">
        {gates.map((gate, index) => (
          <li key={`${gate.name} ${gate.before} ${gate.promised}`}>
            <label>
              <input
                type="checkbox"
                checked={gate.done}
                disabled={edits.busy}
                onChange={(event) => {
                  const done = event.target.checked;
                  change(index, { ...gate, done }, `${gate.name} ${done ? 'done' : 'open again'}`);
                }}
              />
              <span>
                <strong>{gate.name}</strong>, {gate.who}
                <span className="soft gate-when">
                  {gate.done ? 'done' : 'open'}, before {stepWords[gate.before]}
                </span>
              </span>
            </label>
            <Promised {...props} gate={gate} onChange={(next, words) => change(index, next, words)} />
            <button
              type="button"
              className="quiet"
              aria-label={`Take out gate ${gate.name}`}
              onClick={() => change(index, null, `gate ${gate.name} taken out`)}
            >
              ✕
            </button>
          </li>
        ))}
      </ul>
      <GateAdd {...props} />
    </>
  );
}

function Promised(
  props: PartProps & { readonly gate: Gate; readonly onChange: (next: Gate, words: string) => void },
): ReactNode {
  const { gate, context } = props;
  const stands = dateWords(gate.promised);
  const [text, setText] = useState(stands);
  const [why, setWhy] = useState<string | null>(null);
  const take = (): void => {
    if (text.trim() === stands) return;
    const read = readWhen(text, `${gate.promised}T12:00:00Z`, context.timeZone);
    setWhy(read.ok ? null : `${read.error.message} ${read.error.hint ?? ''}`);
    if (!read.ok) return;
    const promised = read.value.slice(0, 10);
    if (promised === gate.promised) setText(stands);
    else props.onChange({ ...gate, promised }, `${gate.name} promised ${dateWords(promised)}`);
  };
  return (
    <>
      <label className="promised-line">
        <span className="soft">promised</span>
        <input
          className="promised"
          aria-label={`${gate.name} is promised`}
          aria-invalid={why !== null}
          value={text}
          onChange={(event) => setText(event.target.value)}
          onBlur={take}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take();
            if (event.key !== 'Escape') return;
            setText(stands);
            setWhy(null);
          }}
        />
      </label>
      {why === null ? null : (
        <span className="field-error" role="alert">
          {why}
        </span>
      )}
    </>
  );
}
