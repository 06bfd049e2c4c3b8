// What is to be formed and by which means, each field with what is wrong with it right under it.
import { type ReactNode, useId } from 'react';
import type { Output } from '../../client/core.tsx';
import { Choice } from '../../parts/choice.tsx';
import { useUnits } from '../../parts/units.tsx';
import { type EndKind, type FillField, type FillProblems, type FillTexts, hasCorners } from './fill-texts.ts';

export interface FillFieldsProps {
  readonly texts: FillTexts;
  readonly problems: FillProblems;
  readonly systems: Output<'rules.read'>['systems'];
  readonly locations: Output<'yard.places'>['locations'];
  readonly onTexts: (change: Partial<FillTexts>) => void;
}

export function FillFields(props: FillFieldsProps): ReactNode {
  const { texts, onTexts, problems } = props;
  const us = useUnits().system === 'us';
  const field = (key: FillField & keyof FillTexts, label: string, hint = ''): ReactNode => (
    <TextField
      label={label}
      value={String(texts[key])}
      hint={hint}
      problem={problems[key]}
      onText={(text) => onTexts({ [key]: text })}
    />
  );
  const end = (name: string, kind: 'startKind' | 'endKind', by: 'startBy' | 'endBy'): ReactNode => (
    <div className="fill-pair">
      <label className="field">
        <span className="field-label">{name}</span>
        <select value={texts[kind]} onChange={(event) => onTexts({ [kind]: event.target.value as EndKind })}>
          <option value="free">free end</option>
          <option value="old-concrete">on old concrete</option>
          <option value="next-pour">next pour</option>
        </select>
      </label>
      {texts[kind] === 'next-pour'
        ? null
        : field(by, texts[kind] === 'free' ? 'Overhang at most' : 'Lap', 'none')}
    </div>
  );
  return (
    <form
      className="fill-fields"
      aria-label="What is to be formed"
      onSubmit={(event) => event.preventDefault()}
    >
      <fieldset>
        <legend className="visually-hidden">What</legend>
        <Choice
          label="What is formed"
          value={texts.what}
          options={[
            ['wall', 'wall'],
            ['column', 'column'],
          ]}
          onChange={(what) => onTexts({ what })}
        />
        <label className="field">
          <span className="field-label">Panel system</span>
          <select value={texts.system} onChange={(event) => onTexts({ system: event.target.value })}>
            {props.systems.map(({ code, name }) => (
              <option key={code} value={code}>
                {code} {name}
              </option>
            ))}
          </select>
          <Wrong words={problems.system} />
        </label>
        {texts.what === 'wall' ? (
          <>
            {field('legs', 'Legs on the face of side A, with their turns', "24' left 12'")}
            <label className="fill-check">
              <input
                type="checkbox"
                checked={texts.closed}
                onChange={(event) => onTexts({ closed: event.target.checked })}
              />
              closed: its last leg turns into its first
            </label>
          </>
        ) : (
          <div className="fill-pair">
            {field('widthA', 'Width of one face')}
            {field('widthB', 'Of the other')}
          </div>
        )}
        {texts.what === 'wall' ? (
          <>
            <div className="fill-pair">
              {field('thickness', 'Thickness')}
              {field('height', 'Height of the pour')}
            </div>
            <div className="fill-pair">
              {field('freeboard', 'Form higher by', 'nothing')}
              {field('rows', 'Rows from the bottom', us ? '8+4, or open' : '2.4+1.2, or open')}
            </div>
          </>
        ) : (
          <div className="fill-pair">
            {field('height', 'Height of the pour')}
            {field('freeboard', 'Form higher by', 'nothing')}
          </div>
        )}
      </fieldset>
      {texts.what === 'wall' && !texts.closed ? (
        <fieldset>
          <legend>Ends</legend>
          {end('Start', 'startKind', 'startBy')}
          {end('End', 'endKind', 'endBy')}
        </fieldset>
      ) : null}
      <fieldset>
        <legend>Fit</legend>
        {texts.what === 'wall' && hasCorners(texts) ? (
          <div className="fill-pair">
            {field('insideLeg', 'Inside corner leg', 'by the catalogue')}
            {field('outsideLeg', 'Outside corner leg', 'by the catalogue')}
          </div>
        ) : null}
        <div className="fill-pair">
          {field('filler', 'Filler at most', 'by the rule table')}
          {field('tolerance', 'Tie holes may be apart', 'nothing')}
        </div>
      </fieldset>
      <fieldset>
        <legend>Greatest gang</legend>
        <div className="fill-triple">
          {field('mostLength', 'Length', 'any')}
          {field('mostHeight', 'Height', 'any')}
          {field('mostWeight', 'Weight', 'any')}
        </div>
        <label className="fill-check">
          <input
            type="checkbox"
            checked={texts.useDesigns}
            onChange={(event) => onTexts({ useDesigns: event.target.checked })}
          />
          gangs already on paper first
        </label>
      </fieldset>
      <fieldset>
        <legend>Panels</legend>
        <Choice
          label="Panels there are"
          value={texts.useStock ? 'stock' : 'any'}
          options={[
            ['any', 'as many as wanted'],
            ['stock', 'what is ready'],
          ]}
          onChange={(which) => onTexts({ useStock: which === 'stock' })}
        />
        {texts.useStock ? (
          <>
            {field('date', 'On', '2026-03-02')}
            {props.locations.map(({ code, name }) => (
              <label key={code} className="fill-check">
                <input
                  type="checkbox"
                  checked={texts.locations.includes(code)}
                  onChange={(event) =>
                    onTexts({
                      locations: event.target.checked
                        ? [...texts.locations, code]
                        : texts.locations.filter((each) => each !== code),
                    })
                  }
                />
                {code} {name}
              </label>
            ))}
            <Wrong words={problems.locations} />
          </>
        ) : null}
      </fieldset>
    </form>
  );
}

function Wrong(props: { readonly words: string | undefined }): ReactNode {
  return props.words === undefined ? null : (
    <span className="field-error" role="alert">
      {props.words}
    </span>
  );
}

function TextField(props: {
  readonly label: string;
  readonly value: string;
  readonly hint: string;
  readonly problem: string | undefined;
  readonly onText: (text: string) => void;
}): ReactNode {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {props.label}
      </label>
      <input
        id={id}
        value={props.value}
        placeholder={props.hint}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={props.problem !== undefined}
        aria-describedby={props.problem === undefined ? undefined : `${id}-why`}
        onChange={(event) => props.onText(event.target.value)}
      />
      {props.problem === undefined ? null : (
        <span className="field-error" id={`${id}-why`} role="alert">
          {props.problem}
        </span>
      )}
    </div>
  );
}
