// The field in a cell that is being edited. Enter and Tab take the text, Escape gives up, leaving it takes it.
import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';

export function CellEditor(props: {
  readonly label: string;
  /** A letter with which editing began replaces what stood there; else the text itself, all marked. */
  readonly begin: string;
  readonly whole: boolean;
  readonly text: string;
  readonly onEnd: (text: string | null, next: 'stay' | 'right' | 'left') => void;
}): ReactNode {
  const [text, setText] = useState(props.whole ? props.text : props.begin);
  const field = useRef<HTMLInputElement>(null);
  const ended = useRef(false);
  useEffect(() => {
    field.current?.focus();
    if (props.whole) field.current?.select();
  }, [props.whole]);
  const end = (taken: string | null, next: 'stay' | 'right' | 'left'): void => {
    if (ended.current) return;
    ended.current = true;
    props.onEnd(taken, next);
  };
  const pressed = (event: KeyboardEvent): void => {
    event.stopPropagation();
    if (event.key === 'Enter') end(text, 'stay');
    else if (event.key === 'Escape') end(null, 'stay');
    else if (event.key === 'Tab') end(text, event.shiftKey ? 'left' : 'right');
    else return;
    event.preventDefault();
  };
  return (
    <input
      ref={field}
      className="cell-editor"
      aria-label={props.label}
      value={text}
      onChange={(event) => setText(event.target.value)}
      onKeyDown={pressed}
      onBlur={() => end(text, 'stay')}
    />
  );
}
