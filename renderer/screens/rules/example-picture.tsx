// The example gang to scale, seen from the back: panels, fillers, rails, hooks, and at every joint the number of
// its locks. A number that the draft changes stands in a box.
import { type ReactNode, useId } from 'react';
import { useUnits } from '../../parts/units.tsx';
import { useSize } from '../designs/use-size.ts';
import type { ExampleJoint } from './example-changes.ts';
import type { ExampleGang } from './rules-shapes.ts';

const greatestHeightPx = 230;
const marginPx = 14;
const onPaper = { widthPx: 420, heightPx: 0 };

export function ExamplePicture(props: {
  readonly name: string;
  readonly gang: ExampleGang;
  readonly joints: readonly ExampleJoint[];
}): ReactNode {
  const { gang, joints } = props;
  const units = useUnits();
  const hatch = useId();
  const [ref, frame] = useSize<HTMLDivElement>(onPaper);
  const room = Math.max(1, frame.widthPx - 2 * marginPx);
  const pxPerNm = Math.min(
    room / Math.max(1, gang.widthNm),
    (greatestHeightPx - 2 * marginPx) / Math.max(1, gang.heightNm),
  );
  const height = gang.heightNm * pxPerNm + 2 * marginPx;
  const left = (frame.widthPx - gang.widthNm * pxPerNm) / 2;
  const x = (nm: number): number => left + nm * pxPerNm;
  const y = (nm: number): number => height - marginPx - nm * pxPerNm;
  const box = (piece: { xNm: number; yNm: number; widthNm: number; heightNm: number }) => ({
    x: x(piece.xNm),
    y: y(piece.yNm + piece.heightNm),
    width: piece.widthNm * pxPerNm,
    height: piece.heightNm * pxPerNm,
  });
  const locks = joints.reduce((sum, joint) => sum + joint.locks, 0);
  const changed = joints.filter(({ before }) => before !== null).length;
  const words = `Elevation of ${props.name}, ${units.length(gang.widthNm)} long, ${units.length(gang.heightNm)} high: ${joints.length} joints with ${locks} locks${changed === 0 ? '' : `, ${changed} joints with another number than in the book`}`;
  return (
    <div className="example-picture" ref={ref}>
      {frame.widthPx === 0 ? null : (
        <svg width={frame.widthPx} height={height} role="img" aria-label={words}>
          <defs>
            <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse">
              <path className="example-hatch" d="M0 5 5 0" />
            </pattern>
          </defs>
          {gang.panels.map((panel) => (
            <rect key={`${panel.xNm} ${panel.yNm}`} className="example-panel" {...box(panel)}>
              <title>{panel.panel}</title>
            </rect>
          ))}
          {gang.fillers.map((filler) => (
            <rect
              key={`${filler.xNm} ${filler.yNm}`}
              className="example-filler"
              fill={`url(#${hatch})`}
              {...box(filler)}
            />
          ))}
          {gang.rails.map((rail) => (
            <line
              key={`${rail.direction} ${rail.xNm} ${rail.yNm}`}
              className="example-rail"
              x1={x(rail.xNm)}
              y1={y(rail.yNm)}
              x2={x(rail.xNm + (rail.direction === 'level' ? rail.lengthNm : 0))}
              y2={y(rail.yNm + (rail.direction === 'upright' ? rail.lengthNm : 0))}
            />
          ))}
          {gang.hooks.map((hook) => (
            <path
              key={`${hook.xNm} ${hook.yNm}`}
              className="example-hook"
              d={`M${x(hook.xNm) - 5} ${y(hook.yNm)} l5 -9 l5 9 z`}
            />
          ))}
          {joints.map((joint) => (
            <JointCount
              key={`${joint.kind} ${joint.xNm} ${joint.yNm}`}
              joint={joint}
              x={x}
              y={y}
              gang={gang}
            />
          ))}
        </svg>
      )}
    </div>
  );
}

function JointCount(props: {
  readonly joint: ExampleJoint;
  readonly gang: ExampleGang;
  readonly x: (nm: number) => number;
  readonly y: (nm: number) => number;
}): ReactNode {
  const { joint, gang } = props;
  // The place of a joint is its left or lower end; a filler's runs along the longer side of the filler.
  const isUpright = joint.kind === 'vertical' || (joint.kind === 'filler' && isAlongUpright(joint, gang));
  const cx = props.x(joint.xNm + (isUpright ? 0 : joint.lengthNm / 2));
  const cy = props.y(joint.yNm + (isUpright ? joint.lengthNm / 2 : 0));
  const text = String(joint.locks);
  const width = 7 * text.length + 7;
  return (
    <g className={joint.before === null ? 'joint-count' : 'joint-count changed'}>
      <title>{joint.before === null ? `${text} locks` : `${text} locks, in the book ${joint.before}`}</title>
      <rect x={cx - width / 2} y={cy - 8} width={width} height={16} rx="2" />
      <text x={cx} y={cy + 4} textAnchor="middle">
        {text}
      </text>
    </g>
  );
}

function isAlongUpright(joint: ExampleJoint, gang: ExampleGang): boolean {
  const filler = gang.fillers.find(
    ({ xNm, yNm, widthNm, heightNm }) =>
      joint.xNm >= xNm && joint.xNm <= xNm + widthNm && joint.yNm >= yNm && joint.yNm <= yNm + heightNm,
  );
  return filler === undefined || filler.heightNm >= joint.lengthNm;
}
