// Places on the ground where gangs are assembled or cleaned, and how far they are from the crane.
import type { ReactNode } from 'react';
import { parseLength } from '../../../core/units/length.ts';
import { useUnits } from '../../parts/units.tsx';
import { EntryList, type WrongField } from './entry-list.tsx';
import type { PlanningEdit, Settings } from './use-planning.ts';

type Pad = Settings['pads'][number];
const uses: Readonly<Record<Pad['use'], string>> = {
  assemble: 'assembling',
  clean: 'cleaning',
  both: 'both',
};

export function PadsPart({ edit }: { readonly edit: PlanningEdit }): ReactNode {
  const { settings, cranes } = edit.planning;
  const { pads } = settings;
  const { length } = useUnits();
  const add = async (typed: Readonly<Record<string, string>>): Promise<WrongField | null> => {
    const code = (typed.code ?? '').trim();
    if (code === '') return { name: 'code', message: 'A short name is wanted.' };
    if (pads.some((each) => each.code === code))
      return { name: 'code', message: `There is a pad ${code} already.` };
    const places = Number(typed.places);
    if (!(Number.isInteger(places) && places >= 1 && places <= 200))
      return { name: 'places', message: 'A whole number from 1 to 200.' };
    const radius = (typed.radius ?? '').trim() === '' ? null : parseLength(typed.radius ?? '');
    if (radius !== null && !radius.ok) return { name: 'radius', message: radius.error.message };
    const pad: Pad = {
      code,
      name: (typed.name ?? '').trim() === '' ? code : (typed.name ?? '').trim(),
      use: typed.use === 'assemble' || typed.use === 'clean' ? typed.use : 'both',
      places,
      reach:
        radius === null || typed.crane === '' ? null : { crane: typed.crane ?? '', radiusNm: radius.value },
    };
    const kept = await edit.set({ pads: [...pads, pad] }, `pad ${code}`);
    return kept ? null : { name: 'code', message: 'It was not kept.' };
  };
  return (
    <EntryList
      title="Pads"
      note="A place takes one gang: from the beginning of its assembly until it is set, from its strip until it is clean. A pad out of the crane’s reach is not counted."
      lines={pads.map((pad) => ({
        key: pad.code,
        name: `pad ${pad.code}`,
        cells: [
          `${pad.code} ${pad.name === pad.code ? '' : pad.name}`,
          uses[pad.use],
          pad.places === 1 ? 'one place' : `${pad.places} places`,
          pad.reach === null ? 'reach not entered' : `${length(pad.reach.radiusNm)} from ${pad.reach.crane}`,
        ],
      }))}
      fields={[
        { name: 'code', label: 'Pad', placeholder: 'N' },
        { name: 'name', label: 'Name', placeholder: 'North pad' },
        {
          name: 'use',
          label: 'For',
          options: [
            ['both', 'both'],
            ['assemble', 'assembling'],
            ['clean', 'cleaning'],
          ],
        },
        { name: 'places', label: 'Places', placeholder: '4' },
        {
          name: 'crane',
          label: 'Crane',
          options: [
            ['', 'not entered'],
            ...cranes.map(({ crane }): readonly [string, string] => [crane, crane]),
          ],
        },
        { name: 'radius', label: 'Radius', placeholder: length(27_432_000_000) },
      ]}
      onAdd={add}
      onTakeOut={(index) => edit.set({ pads: pads.filter((_, at) => at !== index) }, 'take a pad out')}
    />
  );
}
