// A gang as both drawings of a proposal have it: panels by hairlines, fillers hatched, tie holes as dots, and an outline,
// broken where the gang is new.
import type { ReactNode } from 'react';
import type { Box, DrawnDesign } from './drawn-design.ts';

/** Places on the drawing in pixels, from where the gang's lower left corner is. */
export interface GangScale {
  readonly x: number;
  readonly y: number;
  readonly perNm: number;
}

export function GangShape(props: {
  readonly drawn: DrawnDesign;
  readonly size: { readonly widthNm: number; readonly heightNm: number };
  readonly isNew: boolean;
  readonly at: GangScale;
  /** Of the pattern of what is filled. */
  readonly hatch: string;
}): ReactNode {
  const { drawn, size, at } = props;
  return (
    <>
      {drawn.panels.map((panel) => (
        <rect key={`${panel.xNm} ${panel.yNm}`} className="fill-panel" {...boxAt(panel, at)}>
          <title>{panel.code}</title>
        </rect>
      ))}
      {drawn.fillers.map((filler) => (
        <g key={`${filler.xNm} ${filler.yNm}`}>
          <rect className="fill-panel" {...boxAt(filler, at)} />
          <rect className="fill-filler" fill={`url(#${props.hatch})`} {...boxAt(filler, at)}>
            <title>filler</title>
          </rect>
        </g>
      ))}
      {drawn.holes.map((hole) => (
        <Hole key={`${hole.xNm} ${hole.yNm}`} x={at.x + hole.xNm * at.perNm} y={at.y - hole.yNm * at.perNm} />
      ))}
      <rect
        className={props.isNew ? 'fill-gang fill-new' : 'fill-gang'}
        {...boxAt({ ...size, xNm: 0, yNm: 0 }, at)}
      />
    </>
  );
}

export function Hole(props: { readonly x: number; readonly y: number }): ReactNode {
  return <circle className="fill-hole" cx={props.x} cy={props.y} r="1.7" />;
}

export function Hatch(props: { readonly id: string }): ReactNode {
  return (
    <defs>
      <pattern id={props.id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line x1="0" y1="0" x2="0" y2="5" className="fill-hatch" />
      </pattern>
    </defs>
  );
}

export function boxAt(box: Box, { x, y, perNm }: GangScale) {
  return {
    x: x + box.xNm * perNm,
    y: y - (box.yNm + box.heightNm) * perNm,
    width: box.widthNm * perNm,
    height: box.heightNm * perNm,
  };
}
