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
              <th scope="col">Gangs</th>
              <th scope="col">Set from</th>
              <th scope="col">Strip ends</th>
            </tr>
          </thead>
          <tbody>
            {together(props.turns).map(({ turn, gangs }) => (
              <tr key={`${turn.job} ${turn.pour} ${turn.side} ${turn.from} ${turn.to}`}>
                <td>
                  <Link href={`/pours/${encodeURIComponent(turn.pour)}`}>{turn.pour}</Link>
                </td>
                <td>
                  {gangs} on {turn.side}
                </td>
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

/** Gangs of one design that stand on one side at the same time are one line with their number. */
function together(
  turns: DesignDetail['turns'],
): { readonly turn: DesignDetail['turns'][number]; readonly gangs: number }[] {
  const lines: { turn: DesignDetail['turns'][number]; gangs: number }[] = [];
  for (const turn of turns) {
    const same = lines.find(
      ({ turn: one }) =>
        one.job === turn.job &&
        one.pour === turn.pour &&
        one.side === turn.side &&
        one.from === turn.from &&
        one.to === turn.to,
    );
    if (same === undefined) lines.push({ turn, gangs: 1 });
    else same.gangs += 1;
  }
  return lines;
}
