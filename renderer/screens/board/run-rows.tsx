// The board by gang: a row a run, its turns in order with what happens to the gang between them.
import { type KeyboardEvent, memo, type ReactNode, type RefObject, useMemo, useRef, useState } from 'react';
import { Group } from 'react-aria-components';
import type { BoardModel } from './board-rows.ts';
import { Signs } from './choice-signs.tsx';
import { arrivalMark, departureMark, markedWords } from './choice-words.ts';
import type { Turn } from './board-types.ts';
import { DayGrid } from './day-head.tsx';
import type { DayScale } from './day-scale.ts';
import type { RowMetrics } from './metrics.ts';
import { rowTop } from './row-top.ts';
import { useRange } from './use-size.ts';

interface RunRow {
  readonly run: number;
  readonly turns: readonly Turn[];
  readonly designs: string;
  readonly ends: string;
}

export function runRows(model: BoardModel, scale: DayScale): readonly RunRow[] {
  const runs = Map.groupBy(model.board.turns, (turn) => turn.run);
  return [...runs]
    .map(([run, turns]) => ({
      run,
      turns: turns.toSorted((one, other) => Date.parse(one.from) - Date.parse(other.from)),
    }))
    .filter(({ turns }) => turns.some((turn) => scale.shows(Date.parse(turn.from), Date.parse(turn.to))))
    .sort((one, other) => one.run - other.run)
    .map(({ run, turns }) => ({
      run,
      turns,
      designs: [...new Set(turns.map((turn) => turn.design))].join(' → '),
      ends: endWords(turns, model),
    }));
}

function endWords(turns: readonly Turn[], model: BoardModel): string {
  const last = turns.at(-1);
  if (last === undefined) return '';
  const pours = turns.length === 1 ? '1 turn' : `${turns.length} turns`;
  const down = last.after.how === 'break-down' ? `, broken down ${model.words.day(last.to)}` : '';
  return `${pours}${down}`;
}

interface RunRowsProps {
  readonly model: BoardModel;
  readonly rows: readonly RunRow[];
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
  readonly nowMs: number;
  /** The sheet is never lower than the window's part for it. */
  readonly least: number;
  readonly scroller: RefObject<HTMLDivElement | null>;
  readonly selected: string | null;
  readonly onSelect: (code: string | null) => void;
  readonly onGang: (turn: Turn) => void;
}

export function RunRows(props: RunRowsProps): ReactNode {
  const { rows, scale, metrics, model } = props;
  const [first, last] = useRange(props.scroller, rows.length, metrics.runRow);
  const height = Math.max(rows.length * metrics.runRow, props.least);
  const shown = rows.slice(first, last + 1);
  const tops = useMemo(
    () => new Map(rows.map((row, index) => [row.run, index * metrics.runRow])),
    [rows, metrics],
  );
  return (
    <div className="rows-sheet" style={{ height }}>
      <RunHeads {...props} shown={shown} tops={tops} />
      <svg className="row-chart" width={scale.width} height={height} aria-hidden="true">
        <DayGrid scale={scale} height={height} nowMs={props.nowMs} />
        {shown.map((row) => (
          <g key={row.run} transform={`translate(0 ${tops.get(row.run) ?? 0})`} className="row">
            <path className="row-line" d={`M0 ${metrics.runRow - 0.5}H${scale.width}`} />
            <RunMarks
              row={row}
              scale={scale}
              metrics={metrics}
              selected={props.selected}
              onGang={props.onGang}
            />
          </g>
        ))}
      </svg>
      <div className="row-thens">
        {shown.map((row) => (
          <div
            key={row.run}
            className="row-then run"
            style={{ top: tops.get(row.run), height: metrics.runRow }}
          >
            <span className="then-line">{row.ends}</span>
          </div>
        ))}
      </div>
      <RunTable rows={rows} model={model} />
    </div>
  );
}

/** Up and down go from run to run, left and right choose the pour of a turn of it. */
function RunHeads(
  props: RunRowsProps & {
    readonly shown: readonly RunRow[];
    readonly tops: ReadonlyMap<number, number>;
  },
): ReactNode {
  const { rows, metrics, selected } = props;
  const heads = useRef<HTMLDivElement>(null);
  const [reached, setReached] = useState<number | null>(null);
  const current = props.shown.some((row) => row.run === reached) ? reached : props.shown[0]?.run;
  const goTo = (index: number): void => {
    const run = rows[Math.max(0, Math.min(rows.length - 1, index))]?.run;
    if (run === undefined) return;
    setReached(run);
    props.scroller.current?.scrollTo({
      top: rowTop(props.scroller.current, props.tops.get(run) ?? 0, metrics.runRow),
    });
    requestAnimationFrame(() => heads.current?.querySelector<HTMLElement>(`[data-run="${run}"]`)?.focus());
  };
  const pressed = (event: KeyboardEvent<HTMLElement>, row: RunRow): void => {
    const index = rows.indexOf(row);
    const place = row.turns.findIndex((turn) => turn.pour === selected);
    const to: Record<string, number> = {
      ArrowDown: index + 1,
      ArrowUp: index - 1,
      Home: 0,
      End: rows.length - 1,
    };
    const target = to[event.key];
    const turn =
      event.key === 'ArrowRight'
        ? row.turns[place + 1]
        : event.key === 'ArrowLeft'
          ? row.turns[place - 1]
          : undefined;
    if (target !== undefined) goTo(target);
    else if (turn !== undefined) props.onGang(turn);
    else return;
    event.preventDefault();
  };
  return (
    <Group className="row-heads" ref={heads} aria-label="Gang runs">
      {props.shown.map((row) => (
        <button
          key={row.run}
          type="button"
          className="row-head run"
          data-run={row.run}
          style={{ top: props.tops.get(row.run), height: metrics.runRow }}
          tabIndex={row.run === current ? 0 : -1}
          aria-label={`${row.designs} run ${row.run}: ${row.turns.map((turn) => turn.pour).join(', ')}. Left and right choose a pour.`}
          onFocus={() => setReached(row.run)}
          onClick={() => row.turns.slice(0, 1).forEach(props.onGang)}
          onKeyDown={(event) => pressed(event, row)}
        >
          <span className="row-name">
            <b>{row.designs}</b> <span>run {row.run}</span>
          </span>
        </button>
      ))}
    </Group>
  );
}

const RunMarks = memo(function RunMarks(props: {
  readonly row: RunRow;
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
  readonly selected: string | null;
  readonly onGang: (turn: Turn) => void;
}): ReactNode {
  const { row, scale, metrics } = props;
  const height = metrics.runRow - 12;
  const middle = metrics.runRow / 2;
  return row.turns.map((turn, index) => {
    const x = scale.x(Date.parse(turn.from));
    const end = scale.x(Date.parse(turn.to));
    const next = row.turns[index + 1];
    const nextX = next === undefined ? end : scale.x(Date.parse(next.from));
    const between = betweenWords(turn);
    const regang = turn.after.how === 'regang';
    return (
      <g key={turn.id} className={turn.pour === props.selected ? 'turn selected' : 'turn'}>
        {nextX > end ? (
          <path className={regang ? 'turn-link regang' : 'turn-link'} d={`M${end} ${middle}H${nextX}`} />
        ) : null}
        {regang && nextX - end > 14 ? (
          <path className="turn-notch" d={`M${(end + nextX) / 2 - 2} ${middle - 4}v8m4 -8v8`} />
        ) : null}
        {end > x ? (
          <g className="turn-block" onClick={() => props.onGang(turn)}>
            <rect x={x} y={6} width={Math.max(end - x, 2)} height={height} />
            {end - x > 26 ? (
              <text x={x + 5} y={middle + metrics.text * 0.36}>
                {turn.pour}
              </text>
            ) : null}
          </g>
        ) : null}
        {index === 0 ? <Signs mark={arrivalMark(turn)} x={x + 3} y={0} size={5} /> : null}
        <Signs mark={departureMark(turn)} x={end + 2} y={0} size={5} />
        {nextX - end > between.length * metrics.text * 0.55 + 16 ? (
          <text className="turn-between" x={end + 6} y={middle - 3}>
            {between}
          </text>
        ) : null}
      </g>
    );
  });
});

function betweenWords(turn: Turn): string {
  if (turn.after.how === 'break-down') return '';
  const days = Math.floor(turn.after.standsByH / 24);
  const stands = days === 0 ? '' : `, stands by ${days} d`;
  const marked = markedWords(departureMark(turn));
  return `${turn.after.how === 'regang' ? 're-gang' : 'flies on'}${stands}${marked}`;
}

/** The same as text, for those who hear the board. */
function RunTable(props: { readonly rows: readonly RunRow[]; readonly model: BoardModel }): ReactNode {
  const { words } = props.model;
  return (
    <table className="visually-hidden">
      <caption>Gang runs</caption>
      <tbody>
        {props.rows.map((row) => (
          <tr key={row.run}>
            <th scope="row">
              Run {row.run}, {row.designs}
            </th>
            <td>
              {row.turns
                .map(
                  (turn) =>
                    `${turn.pour} from ${words.full(turn.from)} to ${words.full(turn.to)}, ${betweenWords(turn)}`,
                )
                .join('; ')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
