// What is refused and stands at no cell in view.
import type { ReactNode } from 'react';
import type { Problem } from './rules-draft.ts';

export function ProblemList(props: { readonly problems: readonly Problem[] }): ReactNode {
  if (props.problems.length === 0) return null;
  return (
    <ul className="rule-problems">
      {props.problems.map(({ place, message, hint }) => (
        <li key={`${place} ${message}`} className="note note-stop" role="alert">
          <span className="note-word">Refused</span>
          <span>
            {message} <span className="note-hint">{hint}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}
