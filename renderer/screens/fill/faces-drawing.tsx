// Both faces to scale, side A over side B, with a fine line from face to face wherever ties go through; a hole alone is
// crossed out and says so.
import { type ReactNode, useId, useMemo } from 'react';
import type { PanelSystem } from '../../../core/catalogue/system.ts';
import type { SideName } from '../../../core/face/wall.ts';
import { useUnits } from '../../parts/units.tsx';
import { useSize } from '../designs/use-size.ts';
import { Hatch } from './drawn-gang.tsx';
import { FaceDrawing } from './face-drawing.tsx';
import { drawnFaces, type DrawnFaces, type DrawnLeg, sides } from './face-places.ts';
import { type FacesLayout, facesLayout, type LegPlace, margins } from './faces-layout.ts';
import type { Asked, Proposal } from './fill-shapes.ts';

export function FacesDrawing(props: {
  readonly proposal: Proposal;
  readonly wall: NonNullable<Asked['wall']>;
  readonly system: PanelSystem;
}): ReactNode {
  const { proposal, wall, system } = props;
  const faces = useMemo(() => drawnFaces(proposal, wall, system), [proposal, wall, system]);
  const [ref, { widthPx }] = useSize<HTMLElement>({ widthPx: 1160, heightPx: 0 });
  const hatch = useId();
  const layout = facesLayout(faces, widthPx);
  return (
    // A leg too long for the window is scrolled, by keys as well.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section className="fill-scroll" ref={ref} tabIndex={0} aria-label="Both faces">
      <svg
        className="fill-faces"
        viewBox={`0 0 ${layout.widthPx} ${layout.heightPx}`}
        width={layout.widthPx}
        height={layout.heightPx}
        role="img"
        aria-label={facesWords(faces)}
      >
        <Hatch id={hatch} />
        {faces.legs.map((leg, index) => {
          const place = layout.legs[index];
          return place === undefined ? null : (
            <Leg key={leg.leg} leg={leg} faces={faces} layout={layout} place={place} hatch={hatch} />
          );
        })}
      </svg>
    </section>
  );
}

function Leg(props: {
  readonly leg: DrawnLeg;
  readonly faces: DrawnFaces;
  readonly layout: FacesLayout;
  readonly place: LegPlace;
  readonly hatch: string;
}): ReactNode {
  const { leg, faces, layout, place } = props;
  const { perNm } = layout;
  const units = useUnits();
  const highPx = faces.heightNm * perNm;
  const groundA = place.topPx + margins.labels + highPx;
  const ground: Readonly<Record<SideName, number>> = { A: groundA, B: groundA + margins.between + highPx };
  return (
    <g>
      {place.isFirst
        ? sides.map((side) => (
            <g key={side}>
              <text x={4} y={side === 'A' ? ground.A - highPx - 18 : ground.B + 16} className="fill-side">
                side {side}
              </text>
              <Rows rowsNm={faces.rowsNm} groundPx={ground[side]} perNm={perNm} />
            </g>
          ))
        : null}
      {leg.tiesNm.map((xNm) => (
        <line
          key={xNm}
          className="fill-tie"
          x1={place.originPx + xNm * perNm}
          x2={place.originPx + xNm * perNm}
          y1={ground.A}
          y2={ground.A + margins.between}
        />
      ))}
      {leg.faces.map((face) => (
        <FaceDrawing
          key={face.side}
          face={face}
          formNm={faces.heightNm}
          at={{ x: place.originPx, y: ground[face.side], perNm }}
          hatch={props.hatch}
        />
      ))}
      <text
        x={place.middlePx}
        y={place.topPx + layout.lineHighPx - 7}
        textAnchor="middle"
        className="soft-text"
      >
        {legWords(leg, faces.legs.length, units.length)}
      </text>
    </g>
  );
}

function Rows(props: {
  readonly rowsNm: readonly number[];
  readonly groundPx: number;
  readonly perNm: number;
}): ReactNode {
  const units = useUnits();
  return rowMiddles(props.rowsNm).map(({ rowNm, middleNm }) => (
    <text
      key={middleNm}
      x={margins.left - 8}
      y={props.groundPx - middleNm * props.perNm + 4}
      textAnchor="end"
      className="soft-text"
    >
      {units.length(rowNm)}
    </text>
  ));
}

function rowMiddles(rowsNm: readonly number[]): readonly { rowNm: number; middleNm: number }[] {
  let footNm = 0;
  return rowsNm.map((rowNm) => {
    footNm += rowNm;
    return { rowNm, middleNm: footNm - rowNm / 2 };
  });
}

function legWords(leg: DrawnLeg, count: number, length: (lengthNm: number) => string): string {
  const [a, b] = leg.faces.map(({ pour }) => length(pour.widthNm));
  const long = a === b ? `${a} long` : `A ${a}, B ${b} long`;
  return count > 1 ? `leg ${leg.leg + 1}: ${long}` : long;
}

function facesWords({ legs }: DrawnFaces): string {
  const side = (name: SideName): string => {
    const gangs = legs
      .flatMap(({ faces }) => faces.filter((face) => face.side === name))
      .flatMap((face) => face.gangs);
    const words = gangs.map(({ design, isNew }) => `${design}${isNew ? ' new' : ''}`);
    return `side ${name}: ${words.join(', ')}`;
  };
  return `Both faces unfolded. ${side('A')}; ${side('B')}`;
}
