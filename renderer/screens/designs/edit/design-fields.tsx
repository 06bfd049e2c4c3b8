// What a design is called and what stands at its edges: each field with what is wrong with it right under it.
import { type ReactNode, useId } from 'react';
import { type EdgeKind, edgeKinds } from '../../../../core/catalogue/edges.ts';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import { edgeWords } from '../elevation-frame.tsx';
import type { DraftTexts, FieldProblem } from './design-draft.ts';

export interface DesignFieldsProps {
  readonly texts: DraftTexts;
  readonly geometry: DesignGeometry;
  readonly isNew: boolean;
  readonly systems: readonly { readonly code: string; readonly name: string }[];
  /** Undefined while nothing is placed. */
  readonly symmetrical: boolean | undefined;
  readonly problems: readonly FieldProblem[];
  readonly onTexts: (change: Partial<DraftTexts>) => void;
  readonly onGeometry: (words: string, change: Partial<DesignGeometry>) => void;
}

export function DesignFields(props: DesignFieldsProps): ReactNode {
  const { texts, geometry, isNew, onTexts, onGeometry } = props;
  const at = (field: string): FieldProblem | undefined => props.problems.find((one) => one.field === field);
  const text = (field: 'code' | 'name' | 'revision' | 'assemble' | 'breakDown', label: string): ReactNode => (
    <Field label={label} name={field} problem={at(field)}>
      {(ids) => (
        <input
          {...ids}
          value={texts[field]}
          spellCheck={false}
          autoComplete="off"
          onChange={(event) => onTexts({ [field]: event.target.value })}
        />
      )}
    </Field>
  );
  const edge = (side: 'left' | 'right'): ReactNode => (
    <Field label={`${side === 'left' ? 'Left' : 'Right'} edge`} name="edge" problem={at('edges')}>
      {(ids) => (
        <select
          {...ids}
          value={geometry.edges[side]}
          onChange={(event) =>
            onGeometry(`${side} edge`, {
              edges: { ...geometry.edges, [side]: event.target.value as EdgeKind },
            })
          }
        >
          {edgeKinds.map((kind) => (
            <option key={kind} value={kind}>
              {edgeWords(kind)}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
  return (
    <div className="design-fields">
      {isNew ? (
        text('code', 'Code')
      ) : (
        <Field label="Code" name="code" problem={at('code')}>
          {(ids) => (
            <output id={ids.id} className="fixed-value">
              {texts.code}
            </output>
          )}
        </Field>
      )}
      {text('name', 'Name')}
      {isNew && props.systems.length > 1 ? (
        <Field label="System" name="system" problem={at('system')}>
          {(ids) => (
            <select
              {...ids}
              value={texts.system}
              onChange={(event) => onTexts({ system: event.target.value })}
            >
              {props.systems.map(({ code, name }) => (
                <option key={code} value={code}>
                  {code} {name}
                </option>
              ))}
            </select>
          )}
        </Field>
      ) : null}
      {text('revision', 'Revision')}
      <Field label="Hand" name="hand" problem={at('hand')}>
        {(ids) =>
          props.symmetrical === false ? (
            <select
              {...ids}
              value={texts.hand}
              onChange={(event) => onTexts({ hand: event.target.value as DraftTexts['hand'] })}
            >
              <option value="">choose</option>
              <option value="left">left</option>
              <option value="right">right</option>
            </select>
          ) : (
            <output id={ids.id} className="fixed-value">
              {props.symmetrical === undefined ? '…' : 'either'}
            </output>
          )
        }
      </Field>
      {edge('left')}
      {edge('right')}
      {text('assemble', 'Assemble, h')}
      {text('breakDown', 'Break down, h')}
      <div className="design-checks">
        <label>
          <input
            type="checkbox"
            checked={geometry.braced !== false}
            onChange={(event) => onGeometry('braces', { braced: event.target.checked })}
          />
          braced
        </label>
        <label>
          <input
            type="checkbox"
            checked={geometry.equalised}
            onChange={(event) => onGeometry('equalising', { equalised: event.target.checked })}
          />
          equalised rigging
        </label>
      </div>
    </div>
  );
}

interface FieldIds {
  readonly id: string;
  readonly 'aria-invalid': boolean;
  readonly 'aria-describedby': string | undefined;
}

function Field(props: {
  readonly label: string;
  readonly name: string;
  readonly problem: FieldProblem | undefined;
  readonly children: (ids: FieldIds) => ReactNode;
}): ReactNode {
  const { problem } = props;
  const [id, saidId] = [useId(), useId()];
  return (
    <div className={`field field-${props.name}`}>
      <label className="field-label" htmlFor={id}>
        {props.label}
      </label>
      {props.children({
        id,
        'aria-invalid': problem !== undefined,
        'aria-describedby': problem === undefined ? undefined : saidId,
      })}
      {problem === undefined ? null : (
        <span id={saidId} className="field-error" role="alert">
          {problem.message} {problem.hint}
        </span>
      )}
    </div>
  );
}
