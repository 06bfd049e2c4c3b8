// The pour from above: gangs of side A over the concrete, those of side B under it, to scale along the wall.
import { type ReactNode, useId } from 'react';
import { useUnits } from '../../parts/units.tsx';
import type { DesignSummary } from '../designs/design-shapes.ts';
import { useSize } from '../designs/use-size.ts';
import { type PlanGang, planLayout } from './plan-layout.ts';
import type { PourSide } from './pour-shapes.ts';

const rowPx = 21;
const concretePx = 14;
/** Its column in style/print.css, less the edges; the height follows from the gangs. */
const onPaper = { widthPx: 388, heightPx: 0 };

export function PourPlan(props: {
  readonly sides: readonly PourSide[];
  readonly designs: readonly DesignSummary[];
}): ReactNode {
  const units = useUnits();
  const hatch = useId();
  const [ref, frame] = useSize<HTMLDivElement>(onPaper);
  const layout = planLayout(props.sides, props.designs);
  if (layout === undefined) return <p className="soft">No gangs are placed.</p>;
  const left = 20;
  const length = layout.toNm - layout.fromNm;
  const pxPerNm = Math.max(0, frame.widthPx - left - 2) / Math.max(1, length);
  const x = (nm: number): number => left + (nm - layout.fromNm) * pxPerNm;
  const concreteY = layout.layers.A * rowPx;
  const height = concreteY + concretePx + layout.layers.B * rowPx + 16;
  const y = (gang: PlanGang): number =>
    gang.side === 'A' ? concreteY - (gang.layer + 1) * rowPx : concreteY + concretePx + gang.layer * rowPx;
  const words = layout.gangs
    .map(({ side, design, fromNm }) => `side ${side}: ${design} at ${units.length(fromNm)}`)
    .join('; ');
  return (
    <div className="pour-plan" ref={ref}>
      <svg
        width={Math.max(1, frame.widthPx)}
        height={height}
        role="img"
        aria-label={`Plan of the gangs, ${words}`}
      >
        <defs>
          <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse">
            <circle className="concrete-dot" cx="2" cy="2" r="0.8" />
            <circle className="concrete-dot" cx="5" cy="5" r="0.6" />
          </pattern>
        </defs>
        <rect x={left} y={concreteY} width={length * pxPerNm} height={concretePx} fill={`url(#${hatch})`} />
        <text className="plan-side" x={2} y={concreteY - 6}>
          A
        </text>
        <text className="plan-side" x={2} y={concreteY + concretePx + 15}>
          B
        </text>
        {layout.gangs.map((gang) => (
          <g key={`${gang.side} ${gang.fromNm} ${gang.layer}`}>
            <title>{`side ${gang.side}: ${gang.design} from ${units.length(gang.fromNm)} to ${units.length(gang.toNm)}`}</title>
            <rect
              className="plan-gang"
              x={x(gang.fromNm)}
              y={y(gang)}
              width={Math.max(2, (gang.toNm - gang.fromNm) * pxPerNm)}
              height={rowPx}
            />
            {(gang.toNm - gang.fromNm) * pxPerNm > gang.design.length * 7 + 6 ? (
              <text
                className="plan-code"
                x={x((gang.fromNm + gang.toNm) / 2)}
                y={y(gang) + 15}
                textAnchor="middle"
              >
                {gang.design}
              </text>
            ) : null}
          </g>
        ))}
        <text className="plan-length" x={left} y={height - 3}>
          {units.length(layout.fromNm)}
        </text>
        <text className="plan-length" x={left + length * pxPerNm} y={height - 3} textAnchor="end">
          {units.length(layout.toNm)}
        </text>
      </svg>
    </div>
  );
}
