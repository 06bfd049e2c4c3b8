// A load to scale: from the side, cab at the left, with the room over the deck; and from above. Each box bears its stop
// and what it is; stops are also told apart by how their boxes are ruled. The list below it says the same in words.
import type { ReactNode } from 'react';
import { type LoadBox, loadPlaces, rulingPath } from '../../../../core/sheets/load-places.ts';
import { useUnits } from '../../../parts/units.tsx';
import type { LoadFigures } from './loading-words.ts';

/** Of the drawing: the deck is this long in it, whatever the truck. */
const deckLength = 820;
const left = 64;
const gap = 34;
const wordSize = 12;

export function LoadDrawing({ figures }: { readonly figures: LoadFigures }): ReactNode {
  const { truck, stacks } = figures;
  const units = useUnits();
  const { sides, above } = loadPlaces(stacks);
  const scale = deckLength / truck.deckLengthNm;
  const high = truck.stackHeightNm * scale;
  const wide = truck.deckWidthNm * scale;
  const lanes = sides.length === 0 ? [[]] : sides;
  const topOf = (lane: number): number => 18 + lane * (high + gap);
  const plan = topOf(lanes.length);
  return (
    <svg
      className="load-drawing"
      viewBox={`0 0 ${left + deckLength + 12} ${plan + wide + 6}`}
      role="img"
      aria-label={`${truck.name}: ${stacks.length} stacks on a deck of ${units.length(truck.deckLengthNm)}, ${units.length(figures.usedLengthNm)} of it used`}
    >
      {lanes.map((boxes, lane) => {
        const top = topOf(lane);
        return (
          // oxlint-disable-next-line react/no-array-index-key -- a row of stacks is its place on the deck
          <g key={lane}>
            <text x={left} y={top - 6} className="load-title">
              {sideName(lane, lanes.length)}
            </text>
            <rect x={left} y={top} width={deckLength} height={high} className="load-room" />
            <Side boxes={boxes} deckAt={top + high} scale={scale} />
            <TruckLines deckAt={top + high} />
          </g>
        );
      })}
      <text x={left} y={plan - 6} className="load-title">
        from above, with the numbers of the stacks
      </text>
      <rect x={left} y={plan} width={deckLength} height={wide} className="load-deck" />
      <text x={left - 30} y={plan + wide / 2} className="load-title">
        cab
      </text>
      {above.map((box) => {
        const [x, y] = [left + box.xNm * scale, plan + box.yNm * scale];
        const [width, height] = [box.lengthNm * scale, box.acrossNm * scale];
        return (
          <g key={box.key}>
            <rect x={x} y={y} width={width} height={height} className="load-box" />
            <text x={x + width / 2} y={y + height / 2} className="load-words">
              {box.stack}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function sideName(lane: number, lanes: number): string {
  if (lanes === 1) return 'from the side';
  return lane === 0
    ? 'from the side: stacks at the left edge of the deck'
    : `from the side: stacks ${lane + 1} from the left`;
}

function Side(props: {
  readonly boxes: readonly LoadBox[];
  readonly deckAt: number;
  readonly scale: number;
}): ReactNode {
  return props.boxes.map((box) => {
    const x = left + box.xNm * props.scale;
    const y = props.deckAt - (box.yNm + box.acrossNm) * props.scale;
    const [width, height] = [box.lengthNm * props.scale, box.acrossNm * props.scale];
    const full = `${box.stop}: ${box.words}`;
    const fits = full.length * wordSize * 0.6 < width - 6;
    const ruled = rulingPath({ x, y, width, height }, box.stop, 9);
    return (
      <g key={box.key}>
        <rect x={x} y={y} width={width} height={height} className="load-box" />
        {ruled === '' ? null : <path d={ruled} className="load-ruled" />}
        {height < wordSize ? null : (
          <text x={x + width / 2} y={y + height / 2} className="load-words">
            {fits ? full : box.stop}
          </text>
        )}
      </g>
    );
  });
}

function TruckLines({ deckAt }: { readonly deckAt: number }): ReactNode {
  return (
    <g className="load-truck" aria-hidden="true">
      <rect x={left} y={deckAt} width={deckLength} height="4" />
      <path d={`M${left - 4} ${deckAt + 6}H14V${deckAt - 22}L26 ${deckAt - 46}H${left - 4}z`} />
      {[34, left + deckLength * 0.78, left + deckLength * 0.86].map((x) => (
        <circle key={x} cx={x} cy={deckAt + 11} r="8" />
      ))}
    </g>
  );
}
