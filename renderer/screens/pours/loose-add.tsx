// Another loose piece of a pour, and which tie is counted through its opposite holes.
import { type ReactNode, useState } from 'react';
import { useCore } from '../../client/core.tsx';
import { readQuantity } from '../yard/booking-draft.ts';
import { ComponentField } from '../yard/component-field.tsx';
import type { PartProps } from './pour-detail.tsx';
import type { LooseLine } from './pour-shapes.ts';

const sides: readonly LooseLine['side'][] = ['both', 'A', 'B'];

export function LooseAdd(props: PartProps): ReactNode {
  const { row, edits } = props;
  const list = useCore('component.list', {});
  const [line, setLine] = useState({ component: '', quantity: '', purpose: '', side: sides[0] ?? 'both' });
  const [why, setWhy] = useState<string | null>(null);
  const components = list.data?.components ?? [];
  const add = async (): Promise<void> => {
    const quantity = readQuantity(line.quantity);
    const [component, purpose] = [line.component.trim(), line.purpose.trim()];
    if (component === '' || purpose === '' || !quantity.ok) {
      setWhy(quantity.ok ? 'A piece needs its code and what it is for.' : quantity.error.message);
      return;
    }
    setWhy(null);
    const next = { side: line.side, component, quantity: quantity.value, purpose };
    const saved = await edits.change(
      row.pour.code,
      (pour) => ({ ...pour, loose: [...pour.loose, next] }),
      `${row.pour.code}: ${quantity.value} ${component} added`,
    );
    if (saved) setLine({ ...line, component: '', quantity: '', purpose: '' });
  };
  return (
    <>
      <form
        className="add-row"
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        <ComponentField
          label="Another loose piece"
          hint="piece"
          value={line.component}
          invalid={false}
          components={components}
          onChange={(component) => setLine((old) => ({ ...old, component }))}
        />
        <input
          className="quantity"
          aria-label="How many"
          placeholder="pieces"
          inputMode="numeric"
          value={line.quantity}
          onChange={(event) => setLine((old) => ({ ...old, quantity: event.target.value }))}
        />
        <input
          className="grow"
          aria-label="What for"
          placeholder="for"
          maxLength={80}
          value={line.purpose}
          onChange={(event) => setLine((old) => ({ ...old, purpose: event.target.value }))}
        />
        <select
          aria-label="Side"
          value={line.side}
          onChange={(event) =>
            setLine((old) => ({ ...old, side: sides.find((side) => side === event.target.value) ?? 'both' }))
          }
        >
          {sides.map((side) => (
            <option key={side}>{side}</option>
          ))}
        </select>
        <button type="submit" aria-label="Add this piece">
          Add
        </button>
      </form>
      {why === null ? null : (
        <p className="field-error" role="alert">
          {why}
        </p>
      )}
      <TieField {...props} ties={components.filter(({ kind }) => kind === 'tie')} />
    </>
  );
}

function TieField(
  props: PartProps & { readonly ties: readonly { readonly code: string; readonly name: string }[] },
): ReactNode {
  const { row, edits, ties } = props;
  const now = row.pour.tieComponent ?? '';
  return (
    <label className="tie-field">
      <span className="soft">Tie through opposite holes</span>
      <select
        value={now}
        disabled={edits.busy}
        onChange={(event) => {
          const tieComponent = event.target.value === '' ? null : event.target.value;
          void edits.change(
            row.pour.code,
            (pour) => ({ ...pour, tieComponent }),
            `${row.pour.code}: ties ${tieComponent ?? 'not planned'}`,
          );
        }}
      >
        <option value="">not planned</option>
        {now === '' || ties.some(({ code }) => code === now) ? null : <option>{now}</option>}
        {ties.map(({ code, name }) => (
          <option key={code} value={code}>
            {code} · {name}
          </option>
        ))}
      </select>
    </label>
  );
}
