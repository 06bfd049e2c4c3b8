// A length that is typed: taken at Enter or when the field is left, kept with its reason where it cannot be read.
import { type ReactNode, useState } from 'react';
import { formatLength, type UnitSystem } from '../../../../core/units/length.ts';
import { readTypedLength } from './typed-length.ts';

export function LengthField(props: {
  readonly label: string;
  readonly valueNm: number;
  readonly system: UnitSystem;
  /** Over zero only. */
  readonly positive?: boolean;
  readonly onValue: (lengthNm: number) => void;
}): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const take = (): void => {
    if (typed === null) return;
    const read = readTypedLength(typed, props.system);
    if (!read.ok) setProblem(`${read.error.message} ${read.error.hint ?? ''}`);
    else if (props.positive === true && read.value <= 0) setProblem('It must be over zero.');
    else {
      setProblem(null);
      setTyped(null);
      if (read.value !== props.valueNm) props.onValue(read.value);
    }
  };
  return (
    <label className="length-field">
      <span className="soft">{props.label}</span>
      <input
        value={typed ?? formatLength(props.valueNm, props.system)}
        aria-invalid={problem !== null}
        spellCheck={false}
        autoComplete="off"
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key !== 'Escape' || typed === null) return;
          event.preventDefault();
          setTyped(null);
          setProblem(null);
        }}
      />
      {problem === null ? null : (
        <span className="field-error" role="alert">
          {problem}
        </span>
      )}
    </label>
  );
}
