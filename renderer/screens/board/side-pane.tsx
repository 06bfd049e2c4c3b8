// The form of a pane beside the board that is about the plan and not about one pour.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { useEscape } from '../../parts/use-escape.ts';

export function BoardPane(props: {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}): ReactNode {
  useEscape(props.onClose);
  return (
    <aside className="pane side" aria-label={props.title}>
      <div className="pane-head">
        <h2>{props.title}</h2>
        <Button className="quiet" onPress={props.onClose}>
          Close <kbd>Esc</kbd>
        </Button>
      </div>
      {props.children}
    </aside>
  );
}
