// The board as a table of text: the drawing says nothing to those who hear the screen, this says all of it.
import { memo, type ReactNode } from 'react';
import type { TimeWords } from '../../parts/time-words.ts';
import type { PourRow } from './board-rows.ts';
import { rowMarkWords } from './choice-words.ts';

export const BoardTable = memo(function BoardTable(props: {
  readonly rows: readonly PourRow[];
  readonly words: TimeWords;
}): ReactNode {
  const { words } = props;
  return (
    <div className="visually-hidden">
      <table aria-label="The board as text">
        <thead>
          <tr>
            {[
              'Pour',
              'Side A set',
              'Side B set',
              'Pour ends',
              'Strip',
              'Then',
              'Told or fixed',
              'Gates',
              'Short',
            ].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {props.rows.map(({ code, row, follows, turns, shortfalls, state }) => (
            <tr key={code}>
              <th scope="row">
                {code} {row.pour.name}
              </th>
              {row.times.sides.map((side) => (
                <td key={side.side}>{words.full(side.setFrom)}</td>
              ))}
              <td>{words.full(row.times.finishAt)}</td>
              <td>{words.full(row.times.stripFrom)}</td>
              <td>{follows.map((one) => one.words).join('; ')}</td>
              <td>{rowMarkWords(turns) || 'nothing'}</td>
              <td>{state.gate?.text ?? 'ready'}</td>
              <td>{shortfalls.map((one) => `${one.quantity} ${one.name}`).join(', ') || 'nothing'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
});
