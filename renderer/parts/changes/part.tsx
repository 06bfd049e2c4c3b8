// One part of a difference: a heading and its lines, or a word that there are none; of many lines the first few.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';

export function Part(props: {
  readonly title: string;
  readonly none: string | null;
  readonly children: ReactNode;
}): ReactNode {
  return (
    <section className="pane-part">
      <h3>{props.title}</h3>
      {props.none === null ? <ul>{props.children}</ul> : <p className="soft">{props.none}</p>}
    </section>
  );
}

const mostLines = 8;

/** A few lines, and the others when somebody wants them. */
export function LongPart(props: {
  readonly title: string;
  readonly none?: string;
  readonly lines: readonly ReactNode[];
}): ReactNode {
  const [open, setOpen] = useState(false);
  const { lines } = props;
  const more = lines.length - mostLines;
  return (
    <>
      <Part title={props.title} none={lines.length === 0 ? (props.none ?? 'None.') : null}>
        {open || more <= 1 ? lines : lines.slice(0, mostLines)}
      </Part>
      {more <= 1 ? null : (
        <Button className="quiet more-lines" onPress={() => setOpen(!open)}>
          {open ? 'Show fewer' : `${more} more`}
        </Button>
      )}
    </>
  );
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
