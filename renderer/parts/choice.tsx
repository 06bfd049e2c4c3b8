// One of a few words, side by side; the chosen one is underlined and bold. Arrow keys move between them.
import type { ReactNode } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';

export function Choice<T extends string>(props: {
  readonly label: string;
  readonly value: T;
  readonly options: readonly (readonly [T, string])[];
  readonly onChange: (value: T) => void;
}): ReactNode {
  return (
    <ToggleButtonGroup
      className="switch"
      aria-label={props.label}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[props.value]}
      onSelectionChange={(keys) => {
        const chosen = props.options.find(([value]) => keys.has(value));
        if (chosen !== undefined) props.onChange(chosen[0]);
      }}
    >
      {props.options.map(([value, words]) => (
        <ToggleButton key={value} id={value}>
          {words}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
