// A component found at a place where none of it is booked: a line beside those of the count.
import { type ReactNode, useState } from 'react';
import { type Output, useCore } from '../../../client/core.tsx';
import { ComponentField } from '../component-field.tsx';
import type { ReadLine } from './entry-draft.ts';

export function AnotherLine(props: {
  readonly places: Output<'count.read'>['places'];
  readonly lines: readonly ReadLine[];
  readonly onAdd: (line: ReadLine) => void;
}): ReactNode {
  const components = useCore('component.list', {});
  const [code, setCode] = useState('');
  const [place, setPlace] = useState(props.places[0]?.code ?? '');
  const known = components.data?.components ?? [];
  const chosen = known.find((each) => each.code === code);
  const isThere = props.lines.some((line) => line.component === code && line.location === place);
  const add = (): void => {
    if (chosen === undefined || isThere) return;
    props.onAdd({
      location: place,
      component: chosen.code,
      owner: null,
      name: chosen.name,
      class: 'C',
      lookAlikes: [],
      bundleSize: null,
      entered: [],
      booked: {},
      figures: [],
    });
    setCode('');
  };
  return (
    <div className="another-line">
      <span>Found beside the list:</span>
      <ComponentField
        label="Component found beside the list"
        hint="component"
        value={code}
        invalid={isThere}
        components={known}
        onChange={setCode}
      />
      {props.places.length > 1 ? (
        <label>
          at{' '}
          <select value={place} onChange={(event) => setPlace(event.target.value)}>
            {props.places.map((each) => (
              <option key={each.code} value={each.code}>
                {each.code}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      <button type="button" disabled={chosen === undefined || isThere} onClick={add}>
        Add the line
      </button>
      {isThere ? (
        <span className="field-error" role="alert">
          {code} is on the list of {place}.
        </span>
      ) : null}
    </div>
  );
}
