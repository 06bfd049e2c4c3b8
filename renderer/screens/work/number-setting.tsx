// One number, taken when the field is left or Enter is pressed; what is no such number stays typed, with what is wanted.
import { type ReactNode, useId, useState } from 'react';

export function NumberSetting(props: {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
  readonly onSet: (value: number) => unknown;
}): ReactNode {
  const { label, value, least, most, whole = false } = props;
  const id = useId();
  const [text, setText] = useState<string | null>(null);
  const typed = Number(text);
  const isWrong =
    text !== null &&
    (text.trim() === '' ||
      Number.isNaN(typed) ||
      typed < least ||
      typed > most ||
      (whole && !Number.isInteger(typed)));
  const take = (): void => {
    if (text === null || isWrong) return;
    setText(null);
    if (typed !== value) props.onSet(typed);
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        inputMode="decimal"
        value={text ?? String(value)}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-why` : undefined}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setText(null);
        }}
      />
      {isWrong ? (
        <span id={`${id}-why`} className="field-error" role="alert">
          A {whole ? 'whole number' : 'number'} from {least} to {most} is wanted.
        </span>
      ) : null}
    </div>
  );
}
