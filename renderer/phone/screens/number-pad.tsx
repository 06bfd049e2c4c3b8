// A number by keys large enough for gloves: as the whole figure, or on top of it.
import { type ReactNode, useState } from 'react';

const mostDigits = 6;
const keys = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

export function NumberPad(props: {
  /** Pieces in a bundle, where that is known. */
  readonly bundleSize: number | null;
  readonly onSet: (number: number) => void;
  readonly onAdd: (number: number) => void;
  readonly onClose: () => void;
}): ReactNode {
  const { bundleSize, onSet, onAdd, onClose } = props;
  const [typed, setTyped] = useState('');
  const number = Number(typed);
  const isEmpty = typed === '';
  const press = (key: string): void =>
    setTyped((before) =>
      before.length >= mostDigits ? before : `${before}${key}`.replace(/^0+(?=\d)/u, ''),
    );
  return (
    <fieldset className="number-pad" aria-label="Number">
      <output className="count-figure" aria-label="Number typed">
        {isEmpty ? ' ' : typed}
      </output>
      <div className="pad-keys">
        {keys.map((key) => (
          <button key={key} type="button" onClick={() => press(key)}>
            {key}
          </button>
        ))}
        <button type="button" onClick={onClose}>
          Back
        </button>
        <button type="button" onClick={() => press('0')}>
          0
        </button>
        <button
          type="button"
          aria-label="Take the last figure away"
          onClick={() => setTyped(typed.slice(0, -1))}
        >
          ⌫
        </button>
      </div>
      <div className="sheet-actions">
        <button type="button" className="primary" disabled={isEmpty} onClick={() => onSet(number)}>
          It is {isEmpty ? '…' : number}
        </button>
        <button type="button" disabled={isEmpty} onClick={() => onAdd(number)}>
          Add {isEmpty ? '…' : number}
        </button>
        {bundleSize === null ? null : (
          <button type="button" disabled={isEmpty} onClick={() => onAdd(number * bundleSize)}>
            Add {isEmpty ? '…' : number} bundles of {bundleSize}
          </button>
        )}
      </div>
    </fieldset>
  );
}
