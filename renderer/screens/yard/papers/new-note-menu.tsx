// A new note of a kind, out of a menu: each kind with what it is for.
import type { ReactNode } from 'react';
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { useLocation } from 'wouter';
import { noteKindList, noteKindSense, noteKindWords } from './note-words.ts';

export function NewNote(): ReactNode {
  const [, navigate] = useLocation();
  return (
    <MenuTrigger>
      <Button className="primary head-end">New note …</Button>
      <Popover className="popover" placement="bottom end">
        <Menu
          className="menu new-note"
          aria-label="Kind of the new note"
          onAction={(kind) => navigate(`/yard/papers/new?kind=${String(kind)}`)}
        >
          {noteKindList.map((kind) => (
            <MenuItem key={kind} id={kind} className="menu-item" textValue={noteKindWords[kind]}>
              {noteKindWords[kind]} <span className="soft">{noteKindSense[kind]}</span>
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
