// The curve of one component under the days: demand standing, demand held by the plan, stock. Three lines
// told apart by their stroke and by the words at their ends.
import { scaleLinear } from 'd3-scale';
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../client/core.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import type { Curves } from './board-types.ts';
import { DayGrid } from './day-head.tsx';
import type { DayScale } from './day-scale.ts';
import { highest, levelAt, stepPath, stepsOf, stretchesOver } from './step-curve.ts';

const curveHeight = 84;

export function CurveRow(props: {
  readonly job: string;
  readonly component: string;
  readonly scale: DayScale;
  readonly nowMs: number;
  readonly chooser: ReactNode;
}): ReactNode {
  const { scale } = props;
  const curve = useCore('curve.read', {
    job: props.job,
    component: props.component,
    ...useLiveNow(props.job),
  });
  return (
    <div className="foot-row curve-row">
      <div className="foot-head">{props.chooser}</div>
      <div className="foot-chart" style={{ width: scale.width, height: curveHeight }}>
        {curve.data === undefined ? null : <Curve curves={curve.data} scale={scale} nowMs={props.nowMs} />}
      </div>
      <div className="foot-then">
        {curve.data === undefined ? null : <CurveEnds curves={curve.data} scale={scale} />}
      </div>
    </div>
  );
}

function useCurve(curves: Curves, scale: DayScale) {
  return useMemo(() => {
    const standing = stepsOf(curves.standing);
    const held = stepsOf(curves.held);
    const stock = stepsOf(curves.stock);
    const most = Math.max(1, highest([standing, held, stock], scale.fromMs, scale.toMs));
    const y = scaleLinear()
      .domain([0, most])
      .range([curveHeight - 3, 15]);
    return { standing, held, stock, y: (quantity: number) => Math.round(y(quantity)) + 0.5 };
  }, [curves, scale]);
}

export function Curve(props: {
  readonly curves: Curves;
  readonly scale: DayScale;
  readonly nowMs: number;
}): ReactNode {
  const { curves, scale } = props;
  const { standing, held, stock, y } = useCurve(curves, scale);
  const { fromMs, toMs, x } = scale;
  const over = stretchesOver(held, stock, fromMs, toMs);
  const worst = over.toSorted((one, other) => other.high - other.low - (one.high - one.low))[0];
  const path = (steps: typeof held): string => stepPath(steps, fromMs, toMs, x, y);
  return (
    <svg
      className="curve"
      width={scale.width}
      height={curveHeight}
      role="img"
      aria-label={curveWords(curves, scale)}
    >
      <DayGrid scale={scale} height={curveHeight} nowMs={props.nowMs} />
      <path className="curve-standing-fill" d={`${path(standing)}V${y(0)}H${x(fromMs)}Z`} />
      {over.map((one) => (
        <rect
          key={one.fromMs}
          className="curve-over"
          x={x(one.fromMs)}
          y={y(one.high)}
          width={Math.max(x(one.toMs) - x(one.fromMs), 1)}
          height={Math.max(y(one.low) - y(one.high), 3)}
        />
      ))}
      <path className="curve-standing" d={path(standing)} />
      <path className="curve-held" d={path(held)} />
      <path className="curve-stock" d={path(stock)} />
      {worst === undefined ? null : (
        <text className="curve-short" x={Math.min(x(worst.fromMs), scale.width - 60)} y={y(worst.high) - 3}>
          {worst.high - worst.low} short
        </text>
      )}
    </svg>
  );
}

/**
 * Names of the lines with their levels at an instant (the chart's end unless told): at the right, beside
 * where they end and moved apart where they would touch, or in a line under the chart.
 */
export function CurveEnds(props: {
  readonly curves: Curves;
  readonly scale: DayScale;
  readonly atMs?: number;
  readonly level?: boolean;
}): ReactNode {
  const { standing, held, stock, y } = useCurve(props.curves, props.scale);
  const at = props.atMs ?? props.scale.toMs - 1;
  const ends = [
    { kind: 'stock', name: 'stock, ready', quantity: levelAt(stock, at) },
    { kind: 'held', name: 'held by the plan', quantity: levelAt(held, at) },
    { kind: 'standing', name: 'standing', quantity: levelAt(standing, at) },
  ];
  if (props.level === true) {
    return (
      <div className="curve-list">
        {ends.map((end) => (
          <span key={end.kind}>
            <Stroke kind={end.kind} /> {end.quantity} {end.name}
          </span>
        ))}
      </div>
    );
  }
  const tops = apart(ends.map((end) => y(end.quantity) - 8));
  return (
    <div className="curve-ends" style={{ height: curveHeight }}>
      {ends.map((end, index) => (
        <span key={end.kind} style={{ top: tops[index] }}>
          <Stroke kind={end.kind} /> {end.quantity} {end.name}
        </span>
      ))}
    </div>
  );
}

function Stroke(props: { readonly kind: string }): ReactNode {
  return (
    <svg width="26" height="10" aria-hidden="true">
      <path className={`curve-${props.kind}`} d="M1 5.5H25" />
    </svg>
  );
}

const lineHeight = 17;

/** Tops at least a line apart, in their order, kept inside the chart: first pushed down, then back up. */
function apart(tops: readonly number[]): readonly number[] {
  const order = tops.map((_, index) => index).sort((one, other) => (tops[one] ?? 0) - (tops[other] ?? 0));
  const placed = [...tops];
  let least = 0;
  for (const index of order) {
    placed[index] = Math.max(placed[index] ?? 0, least);
    least = (placed[index] ?? 0) + lineHeight;
  }
  let most = curveHeight - lineHeight;
  for (const index of order.toReversed()) {
    placed[index] = Math.min(placed[index] ?? 0, most);
    most = (placed[index] ?? 0) - lineHeight;
  }
  return placed;
}

function curveWords(curves: Curves, scale: DayScale): string {
  const most = (levels: Curves['held']): number => highest([stepsOf(levels)], scale.fromMs, scale.toMs);
  return `${curves.name}: at most ${most(curves.standing)} standing, ${most(curves.held)} held by the plan, ${most(curves.stock)} in stock and ready`;
}
