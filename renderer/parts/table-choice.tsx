// Which columns are shown, in a small menu of words.
import type { Table } from '@tanstack/react-table';
import type { ReactNode } from 'react';
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import type { features } from './table-columns.ts';

export function ColumnChoice<Row extends object>(props: {
  readonly table: Table<typeof features, Row>;
}): ReactNode {
  const columns = props.table.getAllLeafColumns();
  const shown = columns.filter((column) => column.getIsVisible()).map((column) => column.id);
  return (
    <MenuTrigger>
      <Button className="quiet">Columns</Button>
      <Popover className="popover" placement="bottom start">
        <Menu
          className="menu"
          selectionMode="multiple"
          disallowEmptySelection
          selectedKeys={shown}
          onSelectionChange={(keys) => {
            const chosen = keys === 'all' ? null : new Set([...keys].map(String));
            for (const column of columns) column.toggleVisibility(chosen?.has(column.id) ?? true);
          }}
        >
          {columns.map((column) => (
            <MenuItem key={column.id} id={column.id} className="menu-item">
              {String(column.columnDef.header)}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
