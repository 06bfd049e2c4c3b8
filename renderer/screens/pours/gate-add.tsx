// Another gate of a pour: what, by whom, before which step, promised when.
import { type ReactNode, useState } from 'react';
import { readWhen } from '../../parts/when-text.ts';
import { stepWords } from './pour-words.ts';
import type { PartProps } from './pour-detail.tsx';
import type { Gate } from './pour-shapes.ts';

const steps: readonly Gate['before'][] = ['set', 'close', 'pour'];

export function GateAdd(props: PartProps): ReactNode {
  const { row, edits, context } = props;
  const [gate, setGate] = useState({ name: '', who: '', before: steps[2] ?? 'pour', promised: '' });
  const [why, setWhy] = useState<string | null>(null);
  const add = async (): Promise<void> => {
    const [name, who] = [gate.name.trim(), gate.who.trim()];
    const promised = readWhen(gate.promised, row.pour.finishAt, context.timeZone);
    if (name === '' || who === '' || !promised.ok) {
      setWhy(promised.ok ? 'A gate needs its name and who does it.' : promised.error.message);
      return;
    }
    setWhy(null);
    const next: Gate = { name, who, before: gate.before, promised: promised.value.slice(0, 10), done: false };
    const saved = await edits.change(
      row.pour.code,
      (pour) => ({ ...pour, gates: [...pour.gates, next] }),
      `${row.pour.code}: gate ${name} added`,
    );
    if (saved) setGate({ ...gate, name: '', who: '', promised: '' });
  };
  const field = (part: 'name' | 'who' | 'promised', label: string): ReactNode => (
    <input
      className="grow"
      aria-label={label}
      placeholder={label}
      maxLength={80}
      value={gate[part]}
      onChange={(event) => setGate((old) => ({ ...old, [part]: event.target.value }))}
    />
  );
  return (
    <form
      className="add-row add-gate"
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      {field('name', 'another gate')}
      {field('who', 'by whom')}
      <select
        aria-label="Before which step"
        value={gate.before}
        onChange={(event) =>
          setGate((old) => ({ ...old, before: steps.find((step) => step === event.target.value) ?? 'pour' }))
        }
      >
        {steps.map((step) => (
          <option key={step} value={step}>
            before {stepWords[step]}
          </option>
        ))}
      </select>
      {field('promised', 'promised, as 9 Mar')}
      <button type="submit" aria-label="Add this gate">
        Add
      </button>
      {why === null ? null : (
        <span className="field-error" role="alert">
          {why}
        </span>
      )}
    </form>
  );
}
