// A pane at the side of the yard: its heading takes the focus when it opens, Escape closes it.
import { type ReactNode, useEffect, useRef } from 'react';
import { useWindowKeys } from '../../parts/window-keys.ts';

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
  useWindowKeys((event) => {
    // A list that is open inside takes the key first; fields beside the pane have it for themselves.
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    const inside = event.target instanceof Node && pane.current?.contains(event.target) === true;
    if (!inside && event.target !== document.body) return;
    event.preventDefault();
    onClose();
  });
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
