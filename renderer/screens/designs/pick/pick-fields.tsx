// Everything that is entered for a pick, each field with what is wrong with it right under it.
import { type ReactNode, useId, useState } from 'react';
import type { Crane, PickSetup } from '../../../../core/pick/setup.ts';
import { formatLength, type UnitSystem } from '../../../../core/units/length.ts';
import { formatWeight } from '../../../../core/units/weight.ts';
import { speedWords } from '../../../../core/sheets/pick-words.ts';
import { Choice } from '../../../parts/choice.tsx';
import { type PickDraft, type PickField, typed } from './pick-draft.ts';

export interface PickFieldsProps {
  readonly draft: PickDraft;
  readonly cranes: readonly Crane[];
  readonly system: UnitSystem;
  readonly onDraft: (draft: PickDraft) => void;
  readonly onNewCrane: () => void;
}

export function PickFields(props: PickFieldsProps): ReactNode {
  const { draft, system, onDraft } = props;
  const { setup } = draft;
  const change = (more: Partial<PickSetup>): void => onDraft({ ...draft, setup: { ...setup, ...more } });
  const text = (field: PickField, label: string, kept: string, hint: string): ReactNode => (
    <TextField
      label={label}
      kept={kept}
      hint={hint}
      wrong={draft.wrong[field]}
      onText={(now) => onDraft(typed(draft, field, now, system))}
    />
  );
  const length = (value: number | null): string => (value === null ? '' : formatLength(value, system));
  const feet = system === 'us';
  const byAngle = setup.rigging.by === 'angle';
  return (
    <form className="pick-fields" aria-label="How it is picked" onSubmit={(event) => event.preventDefault()}>
      <fieldset>
        <legend>Slings</legend>
        <Choice
          label="Slings given by"
          value={setup.rigging.by}
          options={[
            ['angle', 'by angle'],
            ['legs', 'by leg length'],
          ]}
          onChange={(by) =>
            change({ rigging: by === 'angle' ? { by, angleDeg: 60 } : { by, legLengthNm: 3_048_000_000 } })
          }
        />
        {setup.rigging.by === 'angle'
          ? text('angle', 'Angle from the horizontal, °', String(setup.rigging.angleDeg), '60')
          : text('leg', 'Length of a leg', length(setup.rigging.legLengthNm), feet ? "10'" : '3 m')}
        {text(
          'slings',
          'Weight of slings and shackles',
          weightText(setup.slingsGrams, system),
          'not entered',
        )}
        {text(
          'legCapacity',
          'One leg may pull, by its tag',
          weightText(setup.legCapacityGrams ?? 0, system),
          'not entered',
        )}
        {byAngle ? null : <p className="soft">Both legs of one length, to the crane&rsquo;s hook.</p>}
      </fieldset>
      <fieldset>
        <legend>More than two hooks</legend>
        <p className="soft">A gang is rigid: two legs may take all of it, unless gear shares the load.</p>
        {text('gearName', 'Equalising gear, by name', setup.equalisingGear?.name ?? '', 'none')}
        {setup.equalisingGear === null
          ? null
          : text('gearWeight', 'Its weight', weightText(setup.equalisingGear.weightGrams, system), '')}
      </fieldset>
      <fieldset>
        <legend>The gang</legend>
        <Choice
          label="Picked up"
          value={setup.pickedUpFrom}
          options={[
            ['flat', 'from flat'],
            ['standing', 'standing'],
          ]}
          onChange={(pickedUpFrom) => change({ pickedUpFrom })}
        />
        {text(
          'concrete',
          'Concrete left on it, % of its weight',
          setup.concreteLeftOn === 0 ? '' : String(Number((setup.concreteLeftOn * 100).toFixed(4))),
          'none',
        )}
      </fieldset>
      <fieldset>
        <legend>Crane</legend>
        <div className="pick-crane">
          <CraneChoice cranes={props.cranes} chosen={setup.crane} onChoose={(crane) => change({ crane })} />
          <button type="button" onClick={props.onNewCrane}>
            {setup.crane === null ? 'New crane …' : 'Its chart …'}
          </button>
        </div>
        {text('pickUpRadius', 'Radius at pick-up', length(setup.pickUpRadiusNm), 'not entered')}
        {text('setRadius', 'Radius where it is set', length(setup.setRadiusNm), 'not entered')}
      </fieldset>
      <fieldset>
        <legend>Wind</legend>
        {text(
          'wind',
          `Wind expected, ${feet ? 'mph' : 'm/s'}`,
          setup.windMps === null ? '' : speedWords(setup.windMps, system),
          'not entered',
        )}
        {text('windSource', 'Who says so, and when', setup.windSource, 'nobody named')}
      </fieldset>
    </form>
  );
}

function weightText(grams: number, system: UnitSystem): string {
  return grams === 0 ? '' : formatWeight(grams, system);
}

function CraneChoice(props: {
  readonly cranes: readonly Crane[];
  readonly chosen: string | null;
  readonly onChoose: (code: string | null) => void;
}): ReactNode {
  return (
    <label className="field">
      <span className="field-label">Crane</span>
      <select
        value={props.chosen ?? ''}
        onChange={(event) => props.onChoose(event.target.value === '' ? null : event.target.value)}
      >
        <option value="">none named</option>
        {props.cranes.map(({ code, name }) => (
          <option key={code} value={code}>
            {code} {name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What is typed stays while the field has the focus; left, it shows what was read, or what is wrong. */
function TextField(props: {
  readonly label: string;
  readonly kept: string;
  readonly hint: string;
  readonly wrong: { readonly text: string; readonly why: string } | undefined;
  readonly onText: (text: string) => void;
}): ReactNode {
  const { wrong } = props;
  const id = useId();
  const [text, setText] = useState<string | null>(null);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {props.label}
      </label>
      <input
        id={id}
        value={text ?? wrong?.text ?? props.kept}
        placeholder={props.hint}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={wrong !== undefined}
        aria-describedby={wrong === undefined ? undefined : `${id}-why`}
        onChange={(event) => {
          setText(event.target.value);
          props.onText(event.target.value);
        }}
        onBlur={() => setText(null)}
      />
      {wrong === undefined ? null : (
        <span className="field-error" id={`${id}-why`} role="alert">
          {wrong.why}
        </span>
      )}
    </div>
  );
}
