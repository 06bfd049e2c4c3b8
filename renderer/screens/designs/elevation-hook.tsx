// A lifting hook at the top of the gang with the load it is counted to carry, and the centre of gravity.
import type { ReactNode } from 'react';
import type { PointNm } from './design-shapes.ts';
import type { HookMark } from './elevation-marks.ts';
import { type Scale, toPx } from './elevation-view.ts';
import type { Units } from '../../parts/units.tsx';

export function HookPiece(props: {
  readonly mark: HookMark;
  readonly scale: Scale;
  readonly units: Units;
}): ReactNode {
  const { x, y } = toPx(props.scale, props.mark);
  return (
    <>
      <path className="hook-bar" d={`M${x - 5} ${y + 12}h10M${x} ${y + 12}V${y - 7}`} />
      <circle className="hook-eye" cx={x} cy={y - 13} r={6} />
      <text className="hook-load" x={x} y={y - 24} textAnchor="middle">
        {props.units.weight(props.mark.loadGrams)}
      </text>
    </>
  );
}

/** A broken ring where a hook may stand and none does. */
export function HookPlacePiece(props: { readonly mark: PointNm; readonly scale: Scale }): ReactNode {
  const { x, y } = toPx(props.scale, props.mark);
  return <circle className="hook-place" cx={x} cy={y - 9} r={5} />;
}

/** Quartered circle, two quarters inked: where the panels' weight has its middle. */
export function CentreOfGravity(props: {
  readonly at: PointNm;
  readonly scale: Scale;
  readonly words: string;
}): ReactNode {
  const { x, y } = toPx(props.scale, props.at);
  const r = 8;
  return (
    <g className="centre-of-gravity">
      <title>{props.words}</title>
      <circle cx={x} cy={y} r={r} />
      <path
        d={`M${x} ${y}L${x} ${y - r}A${r} ${r} 0 0 1 ${x + r} ${y}ZM${x} ${y}L${x} ${y + r}A${r} ${r} 0 0 1 ${x - r} ${y}Z`}
      />
    </g>
  );
}
