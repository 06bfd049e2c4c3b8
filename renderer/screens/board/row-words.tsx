// The words on both sides of a row: which pour it is and what it lacks; what follows its gangs.
import { memo, type ReactNode } from 'react';
import { gateWords, type PourRow } from './board-rows.ts';

export const RowHead = memo(function RowHead(props: {
  readonly row: PourRow;
  readonly top: number;
  readonly height: number;
  readonly selected: boolean;
  readonly reachable: boolean;
  readonly onSelect: (code: string | null) => void;
}): ReactNode {
  const { row, selected } = props;
  const gates = gateWords(row.row);
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
      </span>
      <span className="row-state">
        {gates === null ? null : <span className={gates.late ? 'gate late' : 'gate'}>{gates.short}</span>}
        {row.shortfalls.length > 0 ? <span className="row-short">{shortList(row)}</span> : null}
        {gates === null && row.shortfalls.length === 0 ? (
          <span className="soft">{row.row.pour.element}</span>
        ) : null}
      </span>
    </button>
  );
});

/** "short LK 94, P836 4" */
function shortList(row: PourRow): string {
  const most = new Map<string, number>();
  for (const { component, quantity } of row.shortfalls) {
    most.set(component, Math.max(quantity, most.get(component) ?? 0));
  }
  return `short ${[...most].map(([component, quantity]) => `${component} ${quantity}`).join(', ')}`;
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
