// What planning is set to: how far ahead the crew is told and what a change of that costs, labour by step, hours of the
// crane, pads, whom to call. Without crane and pads those are not reckoned.
import type { ReactNode } from 'react';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { CranesPart } from './cranes-part.tsx';
import { NumberSetting } from './number-setting.tsx';
import { PadsPart } from './pads-part.tsx';
import { PhonesPart } from './phones-part.tsx';
import { LabourPart } from './labour-part.tsx';
import { usePlanning } from './use-planning.ts';

export function SettingsView(props: { readonly readOnly: boolean }): ReactNode {
  const { edit, error } = usePlanning();
  if (error !== null) return <RefusalNote error={error} />;
  if (edit === null) return <Waiting what="Reading the settings …" />;
  const { settings, entered, currency } = edit.planning;
  return (
    <fieldset className="pane work-settings" disabled={props.readOnly || edit.busy}>
      <legend className="work-legend">
        {entered
          ? 'As set for this job'
          : 'Nothing was set yet: these are figures to begin with, common practice, no source'}
      </legend>
      {edit.error === null ? null : <RefusalNote error={edit.error} />}
      <section className="work-part" aria-label="What counts as told">
        <h2>Told to the crew</h2>
        <NumberSetting
          label="Shifts ahead that count as told"
          value={settings.toldShifts}
          least={0}
          most={30}
          whole
          onSet={(toldShifts) => edit.set({ toldShifts }, `tell ${toldShifts} shifts ahead`)}
        />
        <NumberSetting
          label={`Price of a changed instruction, ${currency}`}
          value={settings.changeCents / 100}
          least={0}
          most={1_000_000}
          onSet={(price) =>
            edit.set({ changeCents: Math.round(price * 100) }, 'price of a changed instruction')
          }
        />
        <label className="tick">
          <input
            type="checkbox"
            checked={settings.laidDown}
            onChange={(event) =>
              void edit.set(
                { laidDown: event.target.checked },
                event.target.checked ? 'gangs are laid down to be cleaned' : 'gangs fly straight on',
              )
            }
          />
          gangs are laid down to be cleaned: two picks in place of one
        </label>
      </section>
      <section className="work-part" aria-label="Hire">
        <h2>Hire</h2>
        <NumberSetting
          label="Working days that hired pieces are ordered ahead"
          value={settings.hireLeadDays}
          least={0}
          most={60}
          whole
          onSet={(hireLeadDays) => edit.set({ hireLeadDays }, `order hire ${hireLeadDays} days ahead`)}
        />
      </section>
      <LabourPart edit={edit} />
      <CranesPart edit={edit} />
      <PadsPart edit={edit} />
      <PhonesPart edit={edit} />
    </fieldset>
  );
}
