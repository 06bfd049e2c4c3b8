// Both faces to scale, side A over side B. Panels by hairlines, gangs by strong outlines with their codes, fillers
// hatched, tie holes as dots with a fine line from face to face; a hole alone is crossed out.
import { type ReactNode, useId, useMemo } from 'react';
import type { Panel } from '../../../core/catalogue/component.ts';
import { useUnits } from '../../parts/units.tsx';
import { type DrawnFaces, drawnFaces, type DrawnGang, type DrawnLeg, type SideName } from './face-places.ts';
import type { Proposal } from './fill-shapes.ts';

const widthPx = 1000;
const between = 34;
const left = 46;
const top = 20;

interface Place {
  readonly x: (xNm: number) => number;
  readonly y: (side: SideName, yNm: number) => number;
  readonly px: (lengthNm: number) => number;
}

export function FacesDrawing(props: {
  readonly proposal: Proposal;
  readonly panels: ReadonlyMap<string, Panel>;
}): ReactNode {
  const { proposal, panels } = props;
  const faces = useMemo(() => drawnFaces(proposal, panels), [proposal, panels]);
  const units = useUnits();
  const hatch = useId();
  const perNm = Math.min((widthPx - left - 10) / faces.widthNm, 170 / Math.max(1, faces.heightNm));
  const high = faces.heightNm * perNm;
  const place: Place = {
    x: (xNm) => left + xNm * perNm,
    y: (side, yNm) => top + (side === 'A' ? 0 : high + between) + high - yNm * perNm,
    px: (lengthNm) => lengthNm * perNm,
  };
  const height = top + 2 * high + between + 22;
  return (
    <svg
      className="fill-faces"
      viewBox={`0 0 ${widthPx} ${Math.ceil(height)}`}
      role="img"
      aria-label={facesWords(faces)}
    >
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="6" className="fill-hatch" />
        </pattern>
      </defs>
      {(['A', 'B'] as const).map((side) => (
        <text key={side} x={4} y={place.y(side, faces.heightNm / 2) + 4} className="fill-side">
          side {side}
        </text>
      ))}
      {faces.legs.map((leg) => (
        <g key={leg.leg}>
          <Ties leg={leg} place={place} />
          {leg.gangs.map((gang) => (
            <Gang key={`${gang.side} ${gang.xNm} ${gang.yNm}`} gang={gang} place={place} hatch={hatch} />
          ))}
          <Alone leg={leg} place={place} />
          <text
            x={place.x((leg.fromNm + leg.toNm) / 2)}
            y={height - 6}
            textAnchor="middle"
            className="soft-text"
          >
            {faces.legs.length > 1 ? `leg ${leg.leg + 1}, ` : ''}
            {units.length(leg.toNm - leg.fromNm)}
          </text>
        </g>
      ))}
    </svg>
  );
}

function facesWords({ legs }: DrawnFaces): string {
  const side = (name: SideName): string => {
    const codes = legs.flatMap(({ gangs }) => gangs.filter((gang) => gang.side === name));
    const words = codes.map(({ design, isNew }) => `${design}${isNew ? ' new' : ''}`);
    return `side ${name}: ${words.join(', ')}`;
  };
  return `Both faces unfolded. ${side('A')}; ${side('B')}`;
}

function Gang(props: { readonly gang: DrawnGang; readonly place: Place; readonly hatch: string }): ReactNode {
  const { gang, place } = props;
  const { side } = gang;
  const box = (each: { xNm: number; yNm: number; widthNm: number; heightNm: number }) => ({
    x: place.x(each.xNm),
    y: place.y(side, each.yNm + each.heightNm),
    width: place.px(each.widthNm),
    height: place.px(each.heightNm),
  });
  const shape = box(gang);
  return (
    <g>
      {gang.panels.map((panel) => (
        <rect key={`${panel.xNm} ${panel.yNm}`} className="fill-panel" {...box(panel)}>
          <title>{panel.code}</title>
        </rect>
      ))}
      {gang.fillers.map((filler) => (
        <rect
          key={`f ${filler.xNm} ${filler.yNm}`}
          className="fill-filler"
          fill={`url(#${props.hatch})`}
          {...box(filler)}
        />
      ))}
      {gang.holes.map(({ xNm, yNm }) => (
        <circle
          key={`${xNm} ${yNm}`}
          className="fill-hole"
          cx={place.x(xNm)}
          cy={place.y(side, yNm)}
          r="1.6"
        />
      ))}
      <rect className={gang.isNew ? 'fill-gang fill-new' : 'fill-gang'} {...shape} />
      <text
        x={shape.x + shape.width / 2}
        y={shape.y + shape.height / 2 + 4}
        textAnchor="middle"
        className="fill-code"
      >
        {gang.design}
        {gang.isNew ? ' new' : ''}
      </text>
    </g>
  );
}

/** A line across between the faces at every hole of side A: where side B has one too, a tie goes through. */
function Ties(props: { readonly leg: DrawnLeg; readonly place: Place }): ReactNode {
  const { leg, place } = props;
  const alone = new Set(leg.alone.filter(({ side }) => side === 'A').map(({ xNm }) => xNm));
  const holes = leg.gangs.filter(({ side }) => side === 'A').flatMap((gang) => gang.holes);
  const along = [...new Set(holes.map(({ xNm }) => xNm))].filter((xNm) => !alone.has(xNm));
  return along.map((xNm) => (
    <line
      key={xNm}
      className="fill-tie"
      x1={place.x(xNm)}
      x2={place.x(xNm)}
      y1={place.y('A', 0)}
      y2={place.y('A', 0) + between}
    />
  ));
}

function Alone(props: { readonly leg: DrawnLeg; readonly place: Place }): ReactNode {
  const { leg, place } = props;
  return leg.alone.map(({ side, xNm, yNm, facesForm }) => {
    const [x, y] = [place.x(xNm), place.y(side, yNm)];
    return (
      <path
        key={`${side} ${xNm} ${yNm}`}
        className={facesForm ? 'fill-alone' : 'fill-alone fill-plugged'}
        d={`M ${x - 4} ${y - 4} L ${x + 4} ${y + 4} M ${x - 4} ${y + 4} L ${x + 4} ${y - 4}`}
      >
        <title>{facesForm ? 'no hole opposite' : 'faces no form: plugged'}</title>
      </path>
    );
  });
}
