// Components that are not short but nearest to it: the next to break when a pour slips.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { TimeWords } from '../../parts/time-words.ts';
import { type Tight, tightWords } from './shortfall-rows.ts';

export function TightList(props: {
  readonly tightest: readonly Tight[];
  readonly words: TimeWords;
}): ReactNode {
  if (props.tightest.length === 0) return null;
  return (
    <section className="tight">
      <h2>Next to break</h2>
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">Component</th>
            <th scope="col" className="numeric">
              Held
            </th>
            <th scope="col" className="numeric">
              Stock
            </th>
            <th scope="col">Tightest</th>
          </tr>
        </thead>
        <tbody>
          {props.tightest.map((one) => (
            <tr key={one.component}>
              <td>
                <Link
                  href={`/board?curve=${encodeURIComponent(one.component)}&from=${props.words.date(one.at)}`}
                >
                  <b>{one.component}</b> {one.name}
                </Link>
              </td>
              <td className="numeric">{one.held}</td>
              <td className="numeric">{one.stock}</td>
              <td>{tightWords(one, props.words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
