// The row: widths, then the heights of the rows from the bottom. What is typed is the whole design at once; what
// was done by hand is written back as a row where rows can say it.
import { type ReactNode, useDeferredValue, useEffect, useEffectEvent, useId, useMemo, useState } from 'react';
import type { PanelSystem } from '../../../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import { rowText } from '../../../../core/gang/row-text.ts';
import { useCore } from '../../../client/core.tsx';
import { wordsOf } from '../../../client/refused.ts';
import { useUnits } from '../../../parts/units.tsx';
import type { FieldProblem } from './design-draft.ts';

export function RowField(props: {
  readonly system: PanelSystem;
  readonly systemCode: string;
  readonly geometry: DesignGeometry;
  readonly problem: FieldProblem | undefined;
  readonly onTyped: (typed: DesignGeometry) => void;
}): ReactNode {
  const units = useUnits();
  const [fieldId, helpId] = [useId(), useId()];
  /** What is being typed; null while the field shows the design as it is. */
  const [typed, setTyped] = useState<string | null>(null);
  const asked = typed?.trim() ?? '';
  const row = useCore(
    'design.row',
    { system: props.systemCode, text: asked, units: units.system },
    { enabled: asked !== '' },
  );
  const read = asked === '' || row.isPlaceholderData ? undefined : row.data;
  const take = useEffectEvent((geometry: DesignGeometry) => props.onTyped(geometry));
  useEffect(() => {
    if (read !== undefined) take(read.geometry);
  }, [read]);
  const settled = useDeferredValue(props.geometry);
  const shown = useMemo(
    () => (settled.panels.length === 0 ? '' : rowText(props.system, settled, units.system)),
    [props.system, settled, units.system],
  );
  const refused = asked !== '' && row.error !== null ? wordsOf(row.error) : props.problem;
  const example = units.system === 'us' ? '36 36 24 36 | 8+4' : '900 900 600 | 2700+1200';
  return (
    <div className="row-field">
      <label htmlFor={fieldId}>Row</label>
      <input
        id={fieldId}
        value={typed ?? shown ?? ''}
        placeholder={shown === null ? 'placed by hand: a row typed here begins anew' : example}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={refused !== undefined}
        aria-describedby={helpId}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => {
          if (refused === undefined || asked === '') setTyped(null);
        }}
      />
      <p id={helpId} className={refused === undefined ? 'soft' : 'field-error'}>
        {refused === undefined ? (
          <>
            Widths, then heights from the bottom: <code>{example}</code>. <code>3x36</code> three times,{' '}
            <code>f4</code> a filler, <code>96s</code> a panel on its side; <code>/</code> begins other rows.
          </>
        ) : (
          <span role="alert">
            {refused.message} {refused.hint}
          </span>
        )}
      </p>
    </div>
  );
}
