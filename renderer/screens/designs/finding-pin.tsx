// The sign of a finding: an octagon with a word for a stop, a triangle for a caution, a circle for a note.
// The same sign stands on the drawing and beside the words in the list.
import type { ReactNode } from 'react';
import type { Severity } from './design-shapes.ts';
import type { Pin } from './finding-pins.ts';
import { type Scale, toPx } from './elevation-view.ts';

export function PinShape(props: {
  readonly severity: Severity;
  readonly number: number;
  readonly x: number;
  readonly y: number;
}): ReactNode {
  const { x, y } = props;
  return (
    <g className={`pin pin-${props.severity}`}>
      <path d={outline(props.severity, x, y)} />
      <text x={x} y={y + (props.severity === 'caution' ? 6 : 4)} textAnchor="middle">
        {props.number}
      </text>
    </g>
  );
}

function outline(severity: Severity, x: number, y: number): string {
  switch (severity) {
    case 'stop':
      return `M${x - 4} ${y - 10}h8l6 6v8l-6 6h-8l-6 -6v-8z`;
    case 'caution':
      return `M${x} ${y - 11}L${x + 12} ${y + 10}H${x - 12}Z`;
    case 'note':
      return `M${x - 9} ${y}a9 9 0 1 0 18 0a9 9 0 1 0 -18 0Z`;
    default:
      return '';
  }
}

export function Pins(props: {
  readonly pins: readonly Pin[];
  readonly scale: Scale;
  readonly lit: number | null;
  readonly onPoint: (number: number | null) => void;
}): ReactNode {
  return props.pins.map(({ number, finding, point, beside }) => {
    const { x, y } = toPx(props.scale, point);
    const [atX, atY] = [x + 14 + beside * 24, y - 14];
    return (
      <g
        key={number}
        className={props.lit === number ? 'pin-at lit' : 'pin-at'}
        onPointerEnter={() => props.onPoint(number)}
        onPointerLeave={() => props.onPoint(null)}
      >
        <title>{`${finding.severity} ${number}: ${finding.message}`}</title>
        {props.lit === number ? <circle className="pin-halo" cx={atX} cy={atY} r={17} /> : null}
        <path className="pin-stem" d={`M${x} ${y}L${atX} ${atY}`} />
        <circle className="pin-foot" cx={x} cy={y} r={2} />
        <PinShape severity={finding.severity} number={number} x={atX} y={atY} />
      </g>
    );
  });
}
