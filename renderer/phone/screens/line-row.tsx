// One line of the paper, as a target for a gloved finger.
import type { ReactNode } from 'react';
import { total } from '../../../core/yard/ticket-counts.ts';
import type { CountLine } from '../counting/figures.ts';
import { conditionsOf, standsWords } from './line-words.ts';

export function LineRow(props: { readonly line: CountLine; readonly onOpen: () => void }): ReactNode {
  const { line, onOpen } = props;
  const { component, name, owner, isCounted, isUnsent, lookAlike } = line;
  const figure = total(line.counted) + total(line.extra);
  return (
    <button type="button" className={isCounted ? 'line-row counted' : 'line-row'} onClick={onOpen}>
      <span className="line-what">
        <span className="item-name">
          {component} <span className="line-name">{name}</span>
          {owner === null ? '' : ` of ${owner}`}
        </span>
        <span className="soft">{standsWords(line)}</span>
        {isCounted && figure > 0 ? <span className="soft">{conditionsOf(line)}</span> : null}
        {lookAlike === null ? null : <span className="look-alike">Taken for {lookAlike}</span>}
        {isUnsent ? <span className="unsent-word">not yet sent</span> : null}
      </span>
      <span className="line-figure">{isCounted ? figure : '–'}</span>
    </button>
  );
}
