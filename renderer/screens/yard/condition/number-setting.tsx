// A setting that is a whole number, or nothing where nothing may be said: taken with Enter or on leaving the field.
import { type ReactNode, useState } from 'react';

export function NumberSetting(props: {
  readonly label: string;
  readonly value: number | null;
  readonly most: number;
  /** What stands in the empty field; absent where it may not be empty. */
  readonly none?: string;
  readonly after?: string;
  readonly onSet: (value: number | null) => void;
}): ReactNode {
  const { value, none } = props;
  const [text, setText] = useState<string | null>(null);
  const typed = text?.trim() === '' && none !== undefined ? null : Number(text);
  const isWrong =
    text !== null && typed !== null && !(Number.isInteger(typed) && typed >= 1 && typed <= props.most);
  const take = (): void => {
    if (text === null || isWrong) return;
    setText(null);
    if (typed !== value) props.onSet(typed);
  };
  return (
    <label className="number-setting">
      {props.label}
      <input
        inputMode="numeric"
        value={text ?? (value === null ? '' : String(value))}
        aria-invalid={isWrong}
        {...(none === undefined ? {} : { placeholder: none })}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setText(null);
        }}
      />
      {props.after === undefined ? null : <span className="soft">{props.after}</span>}
      {isWrong ? (
        <span className="field-error" role="alert">
          A whole number from 1 to {props.most}.
        </span>
      ) : null}
    </label>
  );
}
