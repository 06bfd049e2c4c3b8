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
      <ul>
        {props.tightest.map((one) => (
          <li key={one.component}>
            <Link href={`/board?curve=${encodeURIComponent(one.component)}&from=${props.words.date(one.at)}`}>
              <b>{one.component}</b> {one.name}
            </Link>
            <span className="soft">
              {one.held} held of {one.stock}, {tightWords(one, props.words)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
