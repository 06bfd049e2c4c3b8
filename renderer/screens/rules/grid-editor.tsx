// The field in a cell that is being written. Enter and Tab take what stands in it, Escape gives up, leaving it
// takes it. Where only a few words can stand, they are chosen from a list.
import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { yesNo } from './cell-kinds.ts';
import type { GridCell } from './grid-shapes.ts';

export type EditEnd = (text: string | null, next: 'stay' | 'right' | 'left') => void;

export function GridEditor(props: {
  readonly label: string;
  readonly cell: GridCell;
  /** A letter with which editing began; '' for the text that stands there. */
  readonly begin: string;
  readonly onEnd: EditEnd;
}): ReactNode {
  const { cell, label, begin, onEnd } = props;
  const field = useRef<HTMLInputElement & HTMLSelectElement>(null);
  const ended = useRef(false);
  const list = useId();
  const [text, setText] = useState(begin === '' ? cell.text : begin);
  useEffect(() => {
    field.current?.focus();
    if (begin === '' && field.current instanceof HTMLInputElement) field.current.select();
  }, [begin]);
  const end: EditEnd = (taken, next) => {
    if (ended.current) return;
    ended.current = true;
    onEnd(taken, next);
  };
  const pressed = (event: KeyboardEvent): void => {
    event.stopPropagation();
    if (event.key === 'Enter') end(text, 'stay');
    else if (event.key === 'Escape') end(null, 'stay');
    else if (event.key === 'Tab') end(text, event.shiftKey ? 'left' : 'right');
    else return;
    event.preventDefault();
  };
  const shared = {
    ref: field,
    className: 'grid-editor',
    'aria-label': label,
    value: text,
    onKeyDown: pressed,
    onBlur: () => end(text, 'stay'),
  };
  const words = cell.offered?.words ?? (cell.kind?.as === 'yes-no' ? yesNo : undefined);
  if (words !== undefined && (cell.offered?.only ?? true)) {
    const known = words.some(([, each]) => each === text);
    return (
      <select {...shared} onChange={(event) => setText(event.target.value)}>
        <option value="">{cell.otherwise ?? ''}</option>
        {known || text === '' ? null : <option value={text}>{text}</option>}
        {words.map(([value, each]) => (
          <option key={value} value={each}>
            {each}
          </option>
        ))}
      </select>
    );
  }
  return (
    <>
      <input
        {...shared}
        {...(words === undefined ? {} : { list })}
        autoComplete="off"
        onChange={(event) => setText(event.target.value)}
      />
      {words === undefined ? null : (
        <datalist id={list}>
          {words.map(([value, each]) => (
            <option key={value} value={value}>
              {each}
            </option>
          ))}
        </datalist>
      )}
    </>
  );
}
