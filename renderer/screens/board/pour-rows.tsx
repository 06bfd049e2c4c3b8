// The rows of the board, one a pour: head, tracks, and what follows each gang. Rows are chosen by click or
// arrow keys, and moved by dragging or with Shift and the arrow keys; either way only a proposal is made.
import { type KeyboardEvent, memo, type ReactNode, type RefObject, useMemo, useRef, useState } from 'react';
import { Group } from 'react-aria-components';
import type { BoardModel, PourRow } from './board-rows.ts';
import { ChoiceSigns } from './choice-signs.tsx';
import type { Move, Whatif } from './board-types.ts';
import { DayGrid } from './day-head.tsx';
import type { DayScale } from './day-scale.ts';
import { ghostRow } from './ghost.ts';
import type { Link } from './links.ts';
import { LinkLines } from './link-lines.tsx';
import type { RowMetrics } from './metrics.ts';
import { PourMarks } from './pour-marks.tsx';
import { rowTop } from './row-top.ts';
import { RowHead, RowThen } from './row-words.tsx';
import { useDrag } from './use-drag.ts';
import { useRange } from './use-size.ts';

export interface PourRowsProps {
  readonly model: BoardModel;
  readonly rows: readonly PourRow[];
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
  readonly nowMs: number;
  /** The sheet is never lower than the window's part for it. */
  readonly least: number;
  /** The day after the fortnight whose open gates stand out, YYYY-MM-DD. */
  readonly nearUntil: string;
  readonly scroller: RefObject<HTMLDivElement | null>;
  readonly selected: string | null;
  readonly moves: readonly Move[];
  readonly whatif: Whatif | undefined;
  readonly onSelect: (code: string | null) => void;
  readonly onMove: (move: Move) => void;
}

export function PourRows(props: PourRowsProps): ReactNode {
  const { model, rows, scale, metrics, selected } = props;
  const [hovered, setHovered] = useState<string | null>(null);
  const drag = useDrag(scale, props.onMove, props.onSelect);
  const [first, last] = useRange(props.scroller, rows.length, metrics.row);
  const height = Math.max(rows.length * metrics.row, props.least);
  const tops = useMemo(
    () => new Map(rows.map((row, index) => [row.code, index * metrics.row])),
    [rows, metrics.row],
  );
  const shown = useMemo(() => rows.slice(first, last + 1), [rows, first, last]);
  const focusOn = hovered ?? selected;
  const near = useMemo(
    () => model.links.filter((link) => link.fromPour === focusOn || link.toPour === focusOn),
    [model.links, focusOn],
  );
  const passing = useMemo(
    () => linksAcross(model.links, tops, first * metrics.row, (last + 1) * metrics.row),
    [model.links, tops, first, last, metrics.row],
  );
  const moves = drag.move === null ? props.moves : [drag.move];
  const moved = new Map(moves.map((move) => [move.pour, move]));

  return (
    <div className="rows-sheet" style={{ height }}>
      <RowHeads {...props} shown={shown} tops={tops} />
      <svg className="row-chart" width={scale.width} height={height} aria-hidden="true">
        <DayGrid scale={scale} height={height} nowMs={props.nowMs} />
        {shown.map((row) => {
          const top = tops.get(row.code) ?? 0;
          const move = moved.get(row.code);
          return (
            <g
              key={row.code}
              transform={`translate(0 ${top})`}
              className={rowClass(row.code === selected, move !== undefined)}
              onPointerEnter={() => setHovered(row.code)}
              onPointerLeave={() => setHovered(null)}
              onPointerDown={(event) => drag.down(event, row)}
              onPointerMove={drag.moveTo}
              onPointerUp={drag.up}
              onPointerCancel={drag.cancel}
            >
              <rect className="row-hit" x="0" y="0" width={scale.width} height={metrics.row} />
              <path className="row-line" d={`M0 ${metrics.row - 0.5}H${scale.width}`} />
              <PourMarks row={row} scale={scale} metrics={metrics} words={model.words} />
              <ChoiceSigns row={row} scale={scale} metrics={metrics} />
              {move === undefined ? null : (
                <PourMarks
                  ghost
                  row={ghostRow(row, move, model.board.days, props.whatif, model.words.date)}
                  scale={scale}
                  metrics={metrics}
                  words={model.words}
                />
              )}
            </g>
          );
        })}
        <LinkLines links={passing} tops={tops} scale={scale} metrics={metrics} strong={false} />
        <LinkLines links={near} tops={tops} scale={scale} metrics={metrics} strong />
      </svg>
      <div className="row-thens">
        {shown.map((row) => (
          <RowThen
            key={row.code}
            row={row}
            top={tops.get(row.code) ?? 0}
            height={metrics.row}
            selected={row.code === selected}
          />
        ))}
      </div>
    </div>
  );
}

/** Those with any part between two heights of the sheet: a large job has hundreds of others. */
function linksAcross(
  links: readonly Link[],
  tops: ReadonlyMap<string, number>,
  above: number,
  below: number,
): readonly Link[] {
  return links.filter(({ fromPour, toPour }) => {
    const from = tops.get(fromPour) ?? 0;
    const to = tops.get(toPour) ?? 0;
    return Math.max(from, to) >= above && Math.min(from, to) <= below;
  });
}

function rowClass(selected: boolean, moving: boolean): string {
  return ['row', selected ? 'selected' : '', moving ? 'moving' : ''].filter(Boolean).join(' ');
}

const RowHeads = memo(function RowHeads(
  props: PourRowsProps & {
    readonly shown: readonly PourRow[];
    readonly tops: ReadonlyMap<string, number>;
  },
): ReactNode {
  const { rows, metrics, selected } = props;
  const heads = useRef<HTMLDivElement>(null);
  const [reached, setReached] = useState<string | null>(null);
  const stop = reached ?? selected;
  // The one head that Tab stops at: where the focus was last, else the chosen row, else the first.
  const current = props.shown.some((row) => row.code === stop) ? stop : props.shown[0]?.code;
  const step = (code: string, by: number): void => {
    const index = rows.findIndex((row) => row.code === code) + by;
    const next = rows[Math.max(0, Math.min(rows.length - 1, index))];
    if (next === undefined) return;
    setReached(next.code);
    if (selected !== null) props.onSelect(next.code);
    // A row that is not drawn yet is scrolled to first.
    const { current: box } = props.scroller;
    box?.scrollTo({ top: rowTop(box, props.tops.get(next.code) ?? 0, metrics.row) });
    requestAnimationFrame(() =>
      heads.current?.querySelector<HTMLElement>(`[data-pour="${next.code}"]`)?.focus(),
    );
  };
  const pressed = (event: KeyboardEvent<HTMLElement>): void => {
    const code = pourOf(event.target);
    if (code === undefined) return;
    const days: Record<string, number> = { ArrowRight: 1, ArrowLeft: -1 };
    const by: Record<string, number> = { ArrowDown: 1, ArrowUp: -1, Home: -rows.length, End: rows.length };
    const day = days[event.key];
    const rowsBy = by[event.key];
    if (event.shiftKey && day !== undefined) props.onMove(added(props.moves, code, day));
    else if (rowsBy !== undefined) step(code, rowsBy);
    else return;
    event.preventDefault();
  };
  return (
    <Group
      className="row-heads"
      ref={heads}
      aria-label="Pours"
      onKeyDown={pressed}
      onFocus={(event) => setReached(pourOf(event.target) ?? null)}
    >
      {props.shown.map((row) => (
        <RowHead
          key={row.code}
          row={row}
          top={props.tops.get(row.code) ?? 0}
          height={metrics.row}
          selected={row.code === selected}
          reachable={row.code === current}
          nearUntil={props.nearUntil}
          onSelect={props.onSelect}
        />
      ))}
    </Group>
  );
});

function pourOf(target: EventTarget): string | undefined {
  return (target as HTMLElement).closest<HTMLElement>('[data-pour]')?.dataset['pour'];
}

/** Each press adds a day to what is proposed for that pour already. */
function added(moves: readonly Move[], pour: string, by: number): Move {
  const proposed = moves.find((move) => move.pour === pour)?.workingDays ?? 0;
  return { pour, workingDays: proposed + by };
}
