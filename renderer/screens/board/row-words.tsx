// The words on both sides of a row: which pour it is and what it lacks; what follows its gangs.
import { memo, type ReactNode } from 'react';
import type { GateWords, PourRow } from './board-rows.ts';

export const RowHead = memo(function RowHead(props: {
  readonly row: PourRow;
  readonly top: number;
  readonly height: number;
  readonly selected: boolean;
  readonly reachable: boolean;
  /** Open gates promised before this day, YYYY-MM-DD, stand out; those that come later only say so. */
  readonly nearUntil: string;
  readonly onSelect: (code: string | null) => void;
}): ReactNode {
  const { row, selected } = props;
  const { gate, short, element } = row.state;
  return (
    <button
      type="button"
      className={['row-head', selected ? 'selected' : '', props.height >= 56 ? 'tall' : '']
        .filter(Boolean)
        .join(' ')}
      style={{ top: props.top, height: props.height }}
      data-pour={row.code}
      tabIndex={props.reachable ? 0 : -1}
      aria-expanded={selected}
      aria-label={row.spoken}
      title={`${row.row.pour.name} · ${row.row.pour.element}`}
      onClick={() => props.onSelect(selected ? null : row.code)}
    >
      <span className="row-name">
        <b>{row.code}</b> <span>{row.row.pour.name}</span>
      </span>{' '}
      <span className="row-state">
        {gate === null ? null : <span className={gateClass(gate, props.nearUntil)}>{gate.short}</span>}{' '}
        {short === null ? null : <span className="row-short">{short}</span>}
        {gate === null && short === null ? <span className="soft">{element}</span> : null}
      </span>
    </button>
  );
});

function gateClass(gate: GateWords, nearUntil: string): string {
  if (gate.late) return 'gate late';
  return gate.promised < nearUntil ? 'gate near' : 'gate';
}

export const RowThen = memo(function RowThen(props: {
  readonly row: PourRow;
  readonly top: number;
  readonly height: number;
  readonly selected: boolean;
}): ReactNode {
  const { follows } = props.row;
  const lines = follows.length > 3 ? follows.slice(0, 2) : follows;
  const rest = follows.length - lines.length;
  return (
    <div
      className={props.selected ? 'row-then selected' : 'row-then'}
      style={{ top: props.top, height: props.height }}
      title={follows.map((one) => one.words).join('\n')}
    >
      {lines.map((one) => (
        <span key={one.words} className={`then-line ${one.how}`}>
          {one.words}
        </span>
      ))}
      {rest > 0 ? <span className="then-line soft">and {rest} more</span> : null}
    </div>
  );
});
