// How counts are made here: how many lines a spot check takes, blind or not, one counter or two, bundles.
import { type ReactNode, useState } from 'react';
import { useCore } from '../../../client/core.tsx';
import { ComponentField } from '../component-field.tsx';
import type { SettingsEdit } from './use-settings.ts';

export function CountSettings(props: { readonly settings: SettingsEdit }): ReactNode {
  const { settings, set } = props.settings;
  if (settings === undefined) return null;
  return (
    <div className="count-settings">
      <NumberSetting
        label="Lines of a spot check"
        value={settings.spotCheckLines}
        least={1}
        most={500}
        onSet={(value) => set({ spotCheckLines: value }, `take ${value} lines for a spot check`)}
      />
      <label className="tick">
        <input
          type="checkbox"
          checked={settings.blindCounts}
          onChange={(event) =>
            set(
              { blindCounts: event.target.checked },
              event.target.checked ? 'count blind' : 'count with the book',
            )
          }
        />
        count blind
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={settings.counters === 2}
          onChange={(event) =>
            set({ counters: event.target.checked ? 2 : 1 }, 'change the number of counters')
          }
        />
        two counters
      </label>
      <Bundles settings={props.settings} />
    </div>
  );
}

function NumberSetting(props: {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onSet: (value: number) => void;
}): ReactNode {
  const [text, setText] = useState<string | null>(null);
  const typed = Number(text);
  const isWrong = text !== null && !(Number.isInteger(typed) && typed >= props.least && typed <= props.most);
  const take = (): void => {
    if (text === null || isWrong) return;
    setText(null);
    if (typed !== props.value) props.onSet(typed);
  };
  return (
    <label className="number-setting">
      {props.label}
      <input
        inputMode="numeric"
        value={text ?? String(props.value)}
        aria-invalid={isWrong}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setText(null);
        }}
      />
      {isWrong ? (
        <span className="field-error" role="alert">
          A whole number from {props.least} to {props.most}.
        </span>
      ) : null}
    </label>
  );
}

/** Pieces in a bundle, so that "12 bdl" can be counted. */
function Bundles(props: { readonly settings: SettingsEdit }): ReactNode {
  const { settings, set } = props.settings;
  const components = useCore('component.list', {});
  const [component, setComponent] = useState('');
  const [size, setSize] = useState('');
  const sizes = settings?.bundleSizes ?? {};
  const isWrong =
    size !== '' && !(Number.isInteger(Number(size)) && Number(size) >= 2 && Number(size) <= 10_000);
  return (
    <form
      className="bundles"
      onSubmit={(event) => {
        event.preventDefault();
        if (component === '' || size === '' || isWrong) return;
        set(
          { bundleSizes: { ...sizes, [component]: Number(size) } },
          `count ${component} in bundles of ${size}`,
        );
        setComponent('');
        setSize('');
      }}
    >
      <span>In bundles:</span>
      {Object.entries(sizes).map(([code, pieces]) => (
        <span key={code}>
          {code} of {pieces}
          <button
            type="button"
            className="quiet"
            aria-label={`No bundles of ${code}`}
            onClick={() => {
              const { [code]: _, ...rest } = sizes;
              set({ bundleSizes: rest }, `count no bundles of ${code}`);
            }}
          >
            ✕
          </button>
        </span>
      ))}
      <ComponentField
        label="Component that is bundled"
        hint="component"
        value={component}
        invalid={false}
        components={components.data?.components ?? []}
        onChange={setComponent}
      />
      <label>
        <span className="visually-hidden">Pieces in a bundle</span>
        <input
          className="bundle-size"
          inputMode="numeric"
          placeholder="pieces"
          value={size}
          aria-invalid={isWrong}
          onChange={(event) => setSize(event.target.value)}
        />
      </label>
      <button type="submit">Keep</button>
      {isWrong ? (
        <span className="field-error" role="alert">
          A bundle has 2 to 10,000 pieces.
        </span>
      ) : null}
    </form>
  );
}
