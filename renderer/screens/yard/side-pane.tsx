// A pane at the side of the yard: its heading takes the focus when it opens, Escape closes it.
import { type ReactNode, useEffect, useRef } from 'react';

export function SidePane(props: {
  readonly title: string;
  readonly className?: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}): ReactNode {
  const { onClose } = props;
  const pane = useRef<HTMLElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    const element = pane.current;
    if (element === null) return undefined;
    const pressed = (event: KeyboardEvent): void => {
      // A list that is open inside takes the key first.
      if (event.key !== 'Escape' || event.defaultPrevented) return;
      event.preventDefault();
      onClose();
    };
    element.addEventListener('keydown', pressed);
    return () => element.removeEventListener('keydown', pressed);
  }, [onClose]);
  return (
    <aside ref={pane} className={`pane side yard-side ${props.className ?? ''}`} aria-label={props.title}>
      <div className="side-head">
        <h2 ref={heading} tabIndex={-1}>
          {props.title}
        </h2>
        <button type="button" className="quiet" onClick={onClose}>
          Close <kbd>Esc</kbd>
        </button>
      </div>
      {props.children}
    </aside>
  );
}
