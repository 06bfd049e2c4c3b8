// Choosing one component of the catalogue by code or name, typed or from the list.
import { type ReactNode, useMemo } from 'react';
import { Button, ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { useCore } from '../client/core.tsx';

export function ComponentChoice(props: {
  readonly label: string;
  readonly value: string | null;
  readonly onChange: (code: string) => void;
}): ReactNode {
  const list = useCore('component.list', {});
  const items = useMemo(
    () =>
      (list.data?.components ?? []).map((component) => ({
        id: component.code,
        text: `${component.code} ${component.name}`,
        ...component,
      })),
    [list.data],
  );
  return (
    <ComboBox
      className="component-choice"
      defaultItems={items}
      selectedKey={props.value}
      onSelectionChange={(key) => {
        if (key !== null) props.onChange(String(key));
      }}
      menuTrigger="focus"
    >
      <Label className="field-label">{props.label}</Label>
      <span className="combo">
        <Input />
        <Button aria-label="All components">▾</Button>
      </span>
      <Popover className="popover" placement="top start">
        <ListBox
          className="list-box"
          renderEmptyState={() => <p className="nothing">No component has these words.</p>}
        >
          {(item: (typeof items)[number]) => (
            <ListBoxItem className="menu-item" id={item.id} textValue={item.text}>
              <b>{item.code}</b> {item.name}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
