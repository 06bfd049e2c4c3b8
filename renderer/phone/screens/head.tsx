// The head of a screen: where the person is, and the way back.
import { type ReactNode, useEffect } from 'react';

export function Head(props: {
  readonly title: string;
  readonly back?: { readonly to: string; readonly words: string };
}): ReactNode {
  const { title, back } = props;
  useEffect(() => {
    document.title = `${title} – Regang`;
  }, [title]);
  return (
    <header className="phone-head">
      {back === undefined ? null : (
        <a className="big-link" href={back.to}>
          ‹ {back.words}
        </a>
      )}
      <h1>{title}</h1>
    </header>
  );
}
