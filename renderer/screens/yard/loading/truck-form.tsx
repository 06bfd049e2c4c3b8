// A truck: what it may carry, and how large its deck is. Taken back by undo where it was changed.
import { type ReactNode, useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { useUndo } from '../../../parts/undo.tsx';
import { useUnits } from '../../../parts/units.tsx';
import { errorFor, FormEnd, TextField } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import {
  emptyTruck,
  readTruck,
  type Truck,
  type TruckRead,
  type TruckTexts,
  truckTexts,
} from './truck-draft.ts';

export function TruckForm(given: {
  readonly truck: Truck | null;
  readonly onSaved: (code: string) => void;
}): ReactNode {
  const { truck } = given;
  const { system } = useUnits();
  const { draft, set, clear } = useKept<TruckTexts>(
    `truck ${truck?.code ?? ''} ${system}`,
    truck === null ? emptyTruck : truckTexts(truck, system),
  );
  const save = useCommand('truck.save');
  const { remember } = useUndo();
  const [wrong, setWrong] = useState<TruckRead['wrong']>({});
  const keep = async (): Promise<void> => {
    const read = readTruck(draft, system);
    setWrong(read.wrong);
    const next = read.truck;
    if (next === null || save.isPending) return;
    try {
      await save.mutateAsync({ truck: next, isNew: truck === null });
    } catch {
      // Said at the foot of the form.
      return;
    }
    if (truck !== null)
      remember({
        words: `truck ${truck.code}`,
        undo: () => save.mutateAsync({ truck }),
        redo: () => save.mutateAsync({ truck: next }),
      });
    clear();
    given.onSaved(next.code);
  };
  const [length, weight] = system === 'us' ? ["24'", '14,000 lb'] : ['7.3 m', '6,350 kg'];
  const field = (key: keyof TruckTexts, label: string, placeholder: string): ReactNode => (
    <TextField
      label={label}
      value={draft[key]}
      placeholder={placeholder}
      maxLength={80}
      error={errorFor(wrong, save.error, key)}
      onChange={(text) => {
        save.reset();
        setWrong({});
        set({ [key]: text });
      }}
    />
  );
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <div className="slip-fields">
        {truck === null ? field('code', 'Code', 'T1') : null}
        {field('name', 'Name', 'Flatbed')}
        {field('payload', 'Payload', weight)}
        {field('deckLength', 'Deck length', length)}
        {field('deckWidth', 'Deck width', system === 'us' ? "8'" : '2.45 m')}
        {field('stackHeight', 'Highest stack above the deck', system === 'us' ? "6'" : '1.8 m')}
      </div>
      <p className="soft">
        Payload by the truck&rsquo;s papers, less whatever rides along. How high it may be stacked follows
        from the height over the road that its ways allow.
      </p>
      <FormEnd
        words={truck === null ? 'Keep the truck' : `Keep ${truck.code}`}
        busy={save.isPending}
        done={null}
        refused={save.error}
        fields={['code']}
      />
    </form>
  );
}
