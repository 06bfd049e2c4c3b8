// The pieces of a pour that belong to no gang, ties with them. Entered lines can be changed; what the core
// counts from opposite holes cannot, and says so.
import { type ReactNode, useState } from 'react';
import { timeWords } from '../../parts/time-words.ts';
import { readQuantity } from '../yard/booking-draft.ts';
import { LooseAdd } from './loose-add.tsx';
import type { PartProps } from './pour-detail.tsx';
import type { LooseLine } from './pour-shapes.ts';

export function LoosePart(props: PartProps): ReactNode {
  const { row, context, edits } = props;
  const words = timeWords(context.timeZone);
  const counted = row.loose.filter((line) => line.counted);
  const takeOut = (index: number, line: LooseLine): void => {
    void edits.change(
      row.pour.code,
      (pour) => ({ ...pour, loose: pour.loose.filter((_, at) => at !== index) }),
      `${row.pour.code}: ${line.component} taken out`,
    );
  };
  return (
    <>
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col" className="numeric">
              Pieces
            </th>
            <th scope="col">For</th>
            <th scope="col">Side</th>
            <th scope="col">
              <span className="visually-hidden">Take it out</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {row.pour.loose.map((line, index) => (
            <tr key={`${line.component} ${line.purpose} ${line.side}`}>
              <td>{line.component}</td>
              <td className="numeric">
                <LooseQuantity key={line.quantity} {...props} line={line} index={index} />
              </td>
              <td title={line.purpose}>{line.purpose}</td>
              <td>{line.side}</td>
              <td>
                <button
                  type="button"
                  className="quiet"
                  aria-label={`Take out ${line.component} for ${line.purpose}`}
                  onClick={() => takeOut(index, line)}
                >
                  ✕
                </button>
              </td>
            </tr>
          ))}
          {counted.map((line) => (
            <tr
              key={`counted ${line.component} ${line.purpose}`}
              title={`needed from ${words.full(line.from)}`}
            >
              <td>{line.component}</td>
              <td className="numeric">{line.quantity}</td>
              <td title={line.purpose}>{line.purpose}</td>
              <td colSpan={2}>
                <span className="counted-word">counted</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <LooseAdd {...props} />
    </>
  );
}

function LooseQuantity(props: PartProps & { readonly line: LooseLine; readonly index: number }): ReactNode {
  const { row, line, edits } = props;
  const [text, setText] = useState(String(line.quantity));
  const [why, setWhy] = useState<string | null>(null);
  const take = (): void => {
    if (text.trim() === String(line.quantity)) return;
    const read = readQuantity(text);
    setWhy(read.ok ? null : read.error.message);
    if (!read.ok) return;
    const quantity = read.value;
    void edits.change(
      row.pour.code,
      (pour) => ({
        ...pour,
        loose: pour.loose.map((one, at) => (at === props.index ? { ...one, quantity } : one)),
      }),
      `${row.pour.code}: ${quantity} ${line.component}`,
    );
  };
  return (
    <input
      className="quantity"
      inputMode="numeric"
      aria-label={`Pieces of ${line.component} for ${line.purpose}`}
      aria-invalid={why !== null}
      title={why ?? undefined}
      value={text}
      onChange={(event) => setText(event.target.value)}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take();
        if (event.key === 'Escape') {
          setText(String(line.quantity));
          setWhy(null);
        }
      }}
    />
  );
}
