// The pours at which gangs of a design are planned to stand.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useTimeWords } from '../../parts/job-time.ts';
import type { DesignDetail } from './design-shapes.ts';

export function WhereItStands(props: { readonly turns: DesignDetail['turns'] }): ReactNode {
  const words = useTimeWords();
  return (
    <section aria-labelledby="stands-head">
      <div className="part-head">
        <h2 id="stands-head">Where it stands</h2>
      </div>
      {props.turns.length === 0 ? (
        <p className="soft part-words">No pour asks for this design.</p>
      ) : (
        <table className="plain">
          <thead>
            <tr>
              <th scope="col">Pour</th>
              <th scope="col">Side</th>
              <th scope="col">From setting</th>
              <th scope="col">To end of strip</th>
            </tr>
          </thead>
          <tbody>
            {props.turns.map((turn, index) => (
              <tr key={`${turn.job} ${turn.pour} ${turn.side} ${index}`}>
                <td>
                  <Link href={`/pours/${encodeURIComponent(turn.pour)}`}>{turn.pour}</Link>
                </td>
                <td>{turn.side}</td>
                <td>{words.full(turn.from)}</td>
                <td>{words.full(turn.to)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
