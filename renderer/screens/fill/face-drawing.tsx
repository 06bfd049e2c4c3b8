// One face of a leg: its gangs with their codes and lengths, inside corners, closures, the edge of the concrete, and tie
// holes alone.
import { Fragment, type ReactNode } from 'react';
import { useUnits } from '../../parts/units.tsx';
import { boxAt, GangShape, type GangScale, Hole } from './drawn-gang.tsx';
import type { DrawnFace, DrawnGang } from './face-places.ts';

export function FaceDrawing(props: {
  readonly face: DrawnFace;
  /** How high the form is. */
  readonly formNm: number;
  readonly at: GangScale;
  readonly hatch: string;
}): ReactNode {
  const { face, formNm, at, hatch } = props;
  const { pour } = face;
  const { perNm } = at;
  const isBeyond =
    pour.heightNm !== formNm ||
    face.gangs.some(({ xNm, widthNm }) => xNm < pour.xNm || xNm + widthNm > pour.xNm + pour.widthNm);
  return (
    <>
      {face.insideCorners.map((corner) => (
        <rect key={corner.xNm} className="fill-corner" {...boxAt(corner, at)}>
          <title>inside corner</title>
        </rect>
      ))}
      <rect className="fill-filler" fill={`url(#${hatch})`} {...boxAt(face.panels, at)}>
        <title>closure</title>
      </rect>
      {face.cornerHoles.map(({ xNm, yNm }) => (
        <Hole key={`${xNm} ${yNm}`} x={at.x + xNm * perNm} y={at.y - yNm * perNm} />
      ))}
      {face.gangs.map((gang) => {
        const own = { perNm, x: at.x + gang.xNm * perNm, y: at.y - gang.yNm * perNm };
        return (
          <Fragment key={`${gang.xNm} ${gang.yNm}`}>
            <GangShape drawn={gang.drawn} size={gang} isNew={gang.isNew} at={own} hatch={hatch} />
            {gang.heightNm === formNm ? (
              <Outside gang={gang} at={own} isAbove={face.side === 'A'} />
            ) : (
              <Inside gang={gang} at={own} />
            )}
          </Fragment>
        );
      })}
      {isBeyond ? (
        <rect className="fill-pour" {...boxAt(pour, at)}>
          <title>concrete</title>
        </rect>
      ) : null}
      {face.alone.map(({ xNm, yNm, facesForm }) => {
        const [x, y] = [at.x + xNm * perNm, at.y - yNm * perNm];
        return (
          <g key={`${xNm} ${yNm}`} className={facesForm ? 'fill-alone' : 'fill-alone fill-plugged'}>
            <path d={`M ${x - 4} ${y - 4} l 8 8 m -8 0 l 8 -8`} />
            <text x={x} y={y + 15} textAnchor="middle">
              {facesForm ? 'alone' : 'plugged'}
            </text>
          </g>
        );
      })}
    </>
  );
}

interface LabelProps {
  readonly gang: DrawnGang;
  readonly at: GangScale;
}

/** Over or under the face, where nothing else is drawn. */
function Outside(props: LabelProps & { readonly isAbove: boolean }): ReactNode {
  const { gang, at } = props;
  const units = useUnits();
  const widthPx = gang.widthNm * at.perNm;
  const x = at.x + widthPx / 2;
  const y = props.isAbove ? at.y - gang.heightNm * at.perNm - 18 : at.y + 16;
  return (
    <>
      <text x={x} y={y} textAnchor="middle">
        <tspan className="fill-design">{gang.design}</tspan>
        {gang.isNew && widthPx >= 44 ? ' new' : ''}
      </text>
      <text x={x} y={y + 12} textAnchor="middle" className="soft-text">
        {units.length(gang.widthNm)}
      </text>
    </>
  );
}

/** Of gangs that stand over each other: within its own upper left corner. */
function Inside({ gang, at }: LabelProps): ReactNode {
  const units = useUnits();
  return (
    <text x={at.x + 4} y={at.y - gang.heightNm * at.perNm + 13} className="fill-inside">
      <tspan className="fill-design">{gang.design}</tspan>
      {gang.isNew ? ' new' : ''}, {units.length(gang.widthNm)}
    </text>
  );
}
