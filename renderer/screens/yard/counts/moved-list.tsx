// What moved at the places of the count since it began, and on which side of a figure it falls.
import type { ReactNode } from 'react';
import type { Output } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty } from '../../../parts/notes.tsx';

export function MovedList(props: { readonly moved: Output<'count.read'>['moved'] }): ReactNode {
  const words = useTimeWords();
  if (props.moved.length === 0)
    return (
      <Empty title="Nothing moved at its places since it began">
        <p>
          Each figure is held against what was booked at the moment it was counted, so what moves is allowed
          for.
        </p>
      </Empty>
    );
  return (
    <div className="table-scroll">
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col" className="numeric">
              Pieces
            </th>
            <th scope="col">Component</th>
            <th scope="col">Owner</th>
            <th scope="col">From</th>
            <th scope="col">To</th>
            <th scope="col">Note</th>
            <th scope="col">Who</th>
            <th scope="col">Against the figure</th>
          </tr>
        </thead>
        <tbody>
          {props.moved.map((each) => (
            <tr key={each.number}>
              <td>{words.full(each.at)}</td>
              <td className="numeric">{each.quantity}</td>
              <td>{each.component}</td>
              <td>{each.owner}</td>
              <td>{each.from}</td>
              <td>{each.to}</td>
              <td>{each.noteNumber}</td>
              <td>{each.who}</td>
              <td>{each.isAfter ? 'after it was counted: allowed for' : 'in the booked figure'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
