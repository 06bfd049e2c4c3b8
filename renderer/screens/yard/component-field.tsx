// A component by its code: typed, or picked from those whose code or name holds what was typed.
import type { ReactNode } from 'react';
import { ComboBox, Input, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import type { Output } from '../../client/core.tsx';

export type ComponentChoice = Output<'component.list'>['components'][number];

export function ComponentField(props: {
  readonly label: string;
  /** What stands in the field while it is empty. */
  readonly hint?: string;
  readonly value: string;
  readonly invalid: boolean;
  readonly components: readonly ComponentChoice[];
  readonly onChange: (code: string) => void;
}): ReactNode {
  const typed = props.value.trim().toLowerCase();
  const exact = props.components.some(({ code }) => code.toLowerCase() === typed);
  const fitting = props.components.filter(
    ({ code, name }) => exact || `${code} ${name}`.toLowerCase().includes(typed),
  );
  return (
    <ComboBox
      aria-label={props.label}
      allowsCustomValue
      menuTrigger="input"
      isInvalid={props.invalid}
      inputValue={props.value}
      onInputChange={(text) => {
        // A code typed in small letters is still that code.
        const known = props.components.find(({ code }) => code.toLowerCase() === text.trim().toLowerCase());
        props.onChange(known?.code ?? text);
      }}
      items={fitting.slice(0, 60)}
      className="component-field"
    >
      <Input {...(props.hint === undefined ? {} : { placeholder: props.hint })} />
      <Popover className="popover">
        <ListBox<ComponentChoice> className="list-box">
          {(component) => (
            <ListBoxItem id={component.code} textValue={component.code} className="menu-item component-item">
              <span>{component.code}</span>
              <span className="soft">{component.name}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
