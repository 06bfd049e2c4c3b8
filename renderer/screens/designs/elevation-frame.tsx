// What stands around the drawn pieces: the names of the side edges, the scale bar with the view's name, and
// the legend that says in words what each sign is.
import type { ReactNode } from 'react';
import type { EdgeKind } from '../../../core/catalogue/edges.ts';
import { useUnits } from '../../parts/units.tsx';
import type { ShownTakeOff } from './design-shapes.ts';
import { LayerChoice } from './layer-choice.tsx';
import { type Scale, toPx } from './elevation-view.ts';
import { scaleBarNm } from './scale-bar.ts';

const wordsOfEdges: Readonly<Record<EdgeKind, string>> = {
  open: 'open edge',
  'next-gang': 'next gang',
  'against-concrete': 'against concrete',
  'stop-end': 'stop-end',
  'inside-corner': 'inside corner',
  'outside-corner': 'outside corner',
  't-junction': 'T-junction',
  column: 'column',
};

export function edgeWords(kind: EdgeKind): string {
  return wordsOfEdges[kind];
}

/** Along the sides of a gang whose lower left corner is the scale's. */
export function EdgeNames(props: {
  readonly edges: ShownTakeOff['edges'];
  readonly widthNm: number;
  readonly heightNm: number;
  readonly scale: Scale;
}): ReactNode {
  const { edges, widthNm, heightNm, scale } = props;
  const left = toPx(scale, { xNm: 0, yNm: heightNm / 2 });
  const right = toPx(scale, { xNm: widthNm, yNm: heightNm / 2 });
  return (
    <g className="edge-names" textAnchor="middle">
      <text x={left.x - 12} y={left.y} transform={`rotate(-90 ${left.x - 12} ${left.y})`}>
        {edgeWords(edges.left)}
      </text>
      <text x={right.x + 20} y={right.y} transform={`rotate(-90 ${right.x + 20} ${right.y})`}>
        {edgeWords(edges.right)}
      </text>
    </g>
  );
}

export function ScaleBar(props: { readonly pxPerNm: number }): ReactNode {
  const units = useUnits();
  const lengthNm = scaleBarNm(props.pxPerNm, units.system, 120);
  const width = lengthNm * props.pxPerNm;
  return (
    <div className="scale-bar">
      <span>seen from the back{units.system === 'metric' ? ', lengths in mm' : ''}</span>
      <svg width={width + 2} height="9" aria-hidden="true">
        <path d={`M1 1v7M${1 + width} 1v7M${1 + width / 2} 4v4M1 8h${width}`} />
        <rect x="1" y="5" width={width / 2} height="3" />
      </svg>
      <span>{units.length(lengthNm)}</span>
    </div>
  );
}

function has(count: number, entry: ReactNode): ReactNode {
  return count === 0 ? null : entry;
}

export function Legend(props: { readonly design: ShownTakeOff }): ReactNode {
  const { design } = props;
  return (
    <ul className="legend" aria-label="What the signs are">
      {has(
        design.joints.filter(({ kind, locks }) => kind !== 'filler' && locks > 0).length,
        <Entry sign={<rect className="legend-ink" x="3" y="6" width="16" height="4.5" />}>lock</Entry>,
      )}
      {has(
        design.fillers.length,
        <>
          <Entry sign={<path className="legend-line" d="M3 3v10M19 3v10M3 8h16" />}>adjustable lock</Entry>
          <Entry sign={<path className="legend-line" d="M4 14L14 2M9 14L19 2" />}>filler</Entry>
        </>,
      )}
      {has(
        design.rails.length,
        <Entry
          sign={
            <>
              <rect className="legend-hollow" x="2" y="5" width="18" height="7" />
              <circle className="legend-ink" cx="7" cy="8.5" r="1.8" />
              <circle className="legend-ink" cx="15" cy="8.5" r="1.8" />
            </>
          }
        >
          stiffening rail with its bolts
        </Entry>,
      )}
      {has(
        design.rails.filter(({ neededFor }) => neededFor === 'picking').length,
        <Entry sign={<rect className="rail rail-picking" x="2" y="5" width="18" height="7" />}>
          rail for picking only
        </Entry>,
      )}
      {has(
        design.rails.filter(({ neededFor }) => neededFor === 'placing').length,
        <Entry
          sign={
            <>
              <rect className="rail-placing" fill="none" x="2" y="5" width="18" height="7" />
              <path className="legend-line" d="M5 12l5 -7M10 12l5 -7M15 12l4 -6" />
            </>
          }
        >
          rail for placing only
        </Entry>,
      )}
      {has(
        design.brackets.length,
        <Entry sign={<path className="foot-sign" d="M3 3h16M11 15V3M11 14l7 -11M11 14l-7 -11" />}>
          walkway bracket
        </Entry>,
      )}
      {has(
        design.braces.length,
        <Entry sign={<path className="foot-sign" d="M11 0V11M7 5h8M4 11h14v4h-14Z" />}>
          brace with its shoe
        </Entry>,
      )}
      {has(
        design.hookPlaces.length > design.hooks.length ? 1 : 0,
        <Entry sign={<circle className="hook-place" cx="11" cy="8" r="5" />}>place for a hook</Entry>,
      )}
      {has(
        design.hooks.length,
        <Entry sign={<path className="legend-line" d="M11 15V11M6 15h10M11 11a4.5 4.5 0 1 0 -0.1 0" />}>
          lifting hook, its load
        </Entry>,
      )}
      <Entry
        sign={
          <>
            <circle className="legend-hollow" cx="11" cy="8" r="6.5" />
            <path className="legend-ink" d="M11 8V1.5A6.5 6.5 0 0 1 17.5 8ZM11 8v6.5A6.5 6.5 0 0 1 4.5 8Z" />
          </>
        }
      >
        centre of gravity of the panels
      </Entry>
      {has(
        design.holes.length,
        <Entry sign={<path className="legend-line" d="M5 8h12M11 2v12M8 8a3 3 0 1 0 6 0a3 3 0 1 0 -6 0" />}>
          tie hole
        </Entry>,
      )}
      <li>
        <LayerChoice />
      </li>
      <li className="soft">
        Locks are spread evenly to be counted; the maker&rsquo;s instructions say where each goes.
      </li>
    </ul>
  );
}

function Entry(props: { readonly sign: ReactNode; readonly children: ReactNode }): ReactNode {
  return (
    <li>
      <svg width="22" height="16" aria-hidden="true">
        {props.sign}
      </svg>
      {props.children}
    </li>
  );
}
