// What is asked about dates stands where the chosen pour stands else; Escape or its button closes it, and the focus goes in
// when it opens.
import { type ReactNode, useEffect, useRef } from 'react';
import { useEscape } from '../../parts/use-escape.ts';

export function PoursPanel(props: {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}): ReactNode {
  const head = useRef<HTMLHeadingElement>(null);
  useEscape(props.onClose);
  useEffect(() => head.current?.focus(), []);
  return (
    <section className="pours-panel" aria-label={props.title}>
      <header className="pours-panel-head">
        <h2 ref={head} tabIndex={-1}>
          {props.title}
        </h2>
        <button type="button" className="quiet" onClick={props.onClose}>
          Close
        </button>
      </header>
      {props.children}
    </section>
  );
}
