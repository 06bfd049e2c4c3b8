// Whom to call, under the name that gates and bookings have them by.
import type { ReactNode } from 'react';
import { EntryList, type WrongField } from './entry-list.tsx';
import type { PlanningEdit } from './use-planning.ts';

export function PhonesPart({ edit }: { readonly edit: PlanningEdit }): ReactNode {
  const { phones } = edit.planning.settings;
  const add = async (typed: Readonly<Record<string, string>>): Promise<WrongField | null> => {
    const [who, phone] = [(typed.who ?? '').trim(), (typed.phone ?? '').trim()];
    if (who === '') return { name: 'who', message: 'Whose number is it?' };
    if (phone === '') return { name: 'phone', message: 'A number is wanted.' };
    const others = phones.filter((each) => each.who !== who);
    const kept = await edit.set({ phones: [...others, { who, phone }] }, `phone number of ${who}`);
    return kept ? null : { name: 'who', message: 'It was not kept.' };
  };
  return (
    <EntryList
      title="Phone numbers"
      note="They stand beside the name wherever somebody must be called, and on the week plan."
      lines={phones.map(({ who, phone }) => ({
        key: who,
        name: `the number of ${who}`,
        cells: [who, phone],
      }))}
      fields={[
        { name: 'who', label: 'Who', placeholder: 'steel crew' },
        { name: 'phone', label: 'Phone', placeholder: '555 0100' },
      ]}
      onAdd={add}
      onTakeOut={(index) => edit.set({ phones: phones.filter((_, at) => at !== index) }, 'take a number out')}
    />
  );
}
