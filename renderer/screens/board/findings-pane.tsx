// What cannot be as it is entered or fixed: entries of the plan that clash, and fixed choices that no plan can obey.
// The rest is planned all the same.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import type { BoardModel } from './board-rows.ts';
import { BoardPane } from './side-pane.tsx';

export function FindingsPane(props: {
  readonly model: BoardModel;
  readonly onSelect: (pour: string) => void;
  readonly onClose: () => void;
}): ReactNode {
  const { board, byCode } = props.model;
  return (
    <BoardPane title="Entries that clash" onClose={props.onClose}>
      {board.planFindings.length === 0 ? <p className="soft">Nothing clashes.</p> : null}
      <ul>
        {board.planFindings.map((finding) => {
          const { where } = finding;
          const pour = typeof where === 'string' && byCode.has(where) ? where : null;
          return (
            <li key={`${finding.rule}${finding.message}`} className={`finding ${finding.severity}`}>
              <b>{finding.severity}</b> {withSpokenInstants(finding.message, board.job.timeZone)}{' '}
              {pour === null ? null : (
                <>
                  <Button className="quiet" onPress={() => props.onSelect(pour)}>
                    Show {pour}
                  </Button>{' '}
                  <Link href={`/pours/${encodeURIComponent(pour)}`}>Open in Pours</Link>
                </>
              )}
            </li>
          );
        })}
      </ul>
      <p className="soft pane-links">The rest is planned all the same.</p>
    </BoardPane>
  );
}
