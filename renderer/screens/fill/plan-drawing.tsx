// What is to be formed from above, to scale, as it is typed: its concrete, which side is which, how long its legs are,
// where it begins and what is at its ends.
import type { ReactNode } from 'react';
import { useUnits } from '../../parts/units.tsx';
import type { EndKind, WallPlan } from './fill-texts.ts';
import { type PlanPoint, planFaces } from './plan-places.ts';

const box = { width: 324, leastHeight: 100, mostHeight: 172, across: 74, along: 34 };

const endWords: Readonly<Record<EndKind, string>> = {
  free: 'free',
  'old-concrete': 'old concrete',
  'next-pour': 'next pour',
};

export function PlanDrawing(props: {
  readonly plan: WallPlan;
  readonly closed: boolean;
  readonly ends: readonly [EndKind, EndKind];
}): ReactNode {
  const { lengthsNm, turns, thicknessNm } = props.plan;
  const { closed } = props;
  const units = useUnits();
  const { a, b } = planFaces(lengthsNm, turns, thicknessNm, closed);
  const { place, perNm, height } = fitted([...a, ...b]);
  const line = (points: readonly PlanPoint[]): string =>
    points.map((point) => place(point).join(',')).join(' ');
  const marks = lengthsNm.flatMap((lengthNm, leg) => {
    const [from, to, fromB, toB] = [a[leg], a[leg + 1], b[leg], b[leg + 1]];
    if (from === undefined || to === undefined || fromB === undefined || toB === undefined) return [];
    return [{ leg, lengthNm, a: middle(place(from), place(to)), b: middle(place(fromB), place(toB)) }];
  });
  const [first, firstB, last, lastB] = [a[0], b[0], a.at(-1), b.at(-1)];
  if (first === undefined || firstB === undefined || last === undefined || lastB === undefined) return null;
  const legWords = `${lengthsNm.length} leg${lengthsNm.length === 1 ? '' : 's'}${closed ? ', closed' : ''}`;
  return (
    <svg
      className="fill-plan"
      viewBox={`0 0 ${box.width} ${height}`}
      role="img"
      aria-label={`Plan of the wall: ${legWords}, ${units.length(thicknessNm)} thick`}
    >
      <path className="fill-concrete" d={`M ${line(a)} L ${line(b.toReversed())} Z`} />
      <polyline className="fill-face fill-face-a" points={line(a)} />
      <polyline className="fill-face" points={line(b)} />
      {marks.map(({ leg, lengthNm, a: onA, b: onB }) => {
        const out = unit(onB, onA);
        // Where it would be wider than its leg it is left out.
        const hasRoom = lengthNm * perNm >= (out[0] === 0 ? 40 : 16);
        const length = hasRoom ? units.length(lengthNm) : '';
        return (
          <g key={leg}>
            <Beside at={onA} out={out} words={`${leg === 0 ? 'A ' : ''}${length}`} />
            {leg === 0 ? <Beside at={onB} out={[-out[0], -out[1]]} words="B" /> : null}
          </g>
        );
      })}
      {closed ? null : (
        <>
          <EndMark
            at={middle(place(first), place(firstB))}
            away={unit(place(a[1] ?? first), place(first))}
            words={['start', endWords[props.ends[0]]]}
          />
          <EndMark
            at={middle(place(last), place(lastB))}
            away={unit(place(a.at(-2) ?? last), place(last))}
            words={['end', endWords[props.ends[1]]]}
          />
        </>
      )}
      <circle
        className="fill-start"
        cx={place(first)[0]}
        cy={place(first)[1]}
        r={Math.min(4, Math.max(2.5, thicknessNm * perNm * 0.3))}
      />
    </svg>
  );
}

export function ColumnPlan(props: { readonly widthANm: number; readonly widthBNm: number }): ReactNode {
  const { widthANm, widthBNm } = props;
  const units = useUnits();
  const perNm = Math.min(90 / widthANm, 90 / widthBNm);
  const [wide, high] = [widthANm * perNm, widthBNm * perNm];
  const [x, y] = [(box.width - wide) / 2, (box.mostHeight - high) / 2 - 4];
  return (
    <svg
      className="fill-plan"
      viewBox={`0 0 ${box.width} ${box.mostHeight}`}
      role="img"
      aria-label={`Plan of the column: ${units.length(widthANm)} by ${units.length(widthBNm)}`}
    >
      <rect className="fill-concrete" x={x} y={y} width={wide} height={high} />
      <path className="fill-face" d={`M ${x - 4} ${y - 4} H ${x + wide} M ${x - 4} ${y - 4} V ${y + high}`} />
      <path
        className="fill-face"
        d={`M ${x + wide + 4} ${y + high + 4} H ${x} M ${x + wide + 4} ${y + high + 4} V ${y}`}
      />
      <text x={x + wide / 2} y={y + high + 20} textAnchor="middle">
        {units.length(widthANm)}
      </text>
      <text x={x + wide + 12} y={y + high / 2 + 4}>
        {units.length(widthBNm)}
      </text>
      <text x={box.width / 2} y={box.mostHeight - 6} textAnchor="middle" className="soft-text">
        two halves, opening at two corners
      </text>
    </svg>
  );
}

type Pixels = readonly [x: number, y: number];

function fitted(all: readonly PlanPoint[]): {
  place: (point: PlanPoint) => Pixels;
  perNm: number;
  height: number;
} {
  const [left, right] = [Math.min(...all.map((p) => p.xNm)), Math.max(...all.map((p) => p.xNm))];
  const [low, high] = [Math.min(...all.map((p) => p.yNm)), Math.max(...all.map((p) => p.yNm))];
  const perNm = Math.min(
    (box.width - 2 * box.across) / Math.max(1, right - left),
    (box.mostHeight - 2 * box.along) / Math.max(1, high - low),
  );
  // A straight wall leaves its room to what is entered.
  const height = Math.max(box.leastHeight, Math.round((high - low) * perNm) + 2 * box.along);
  const place = ({ xNm, yNm }: PlanPoint): Pixels => [
    box.width / 2 + (xNm - (left + right) / 2) * perNm,
    height / 2 - (yNm - (low + high) / 2) * perNm,
  ];
  return { place, perNm, height };
}

function middle(one: Pixels, other: Pixels): Pixels {
  return [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2];
}

function unit(from: Pixels, to: Pixels): Pixels {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  return Math.abs(x) > Math.abs(y) ? [Math.sign(x), 0] : [0, Math.sign(y)];
}

/** Words outside of a face: over or under it, at its left or its right. */
function Beside(props: { readonly at: Pixels; readonly out: Pixels; readonly words: string }): ReactNode {
  const { at, out } = props;
  const anchor = out[0] === 0 ? 'middle' : out[0] < 0 ? 'end' : 'start';
  return (
    <text x={at[0] + out[0] * 6} y={at[1] + (out[1] > 0 ? 14 : out[1] < 0 ? -6 : 4)} textAnchor={anchor}>
      {props.words}
    </text>
  );
}

function EndMark(props: {
  readonly at: Pixels;
  readonly away: Pixels;
  readonly words: readonly [string, string];
}): ReactNode {
  const { at, away: out, words } = props;
  const anchor = out[0] === 0 ? 'middle' : out[0] < 0 ? 'end' : 'start';
  const x = at[0] + out[0] * 8;
  const y = at[1] + (out[1] > 0 ? 16 : out[1] < 0 ? -20 : -2);
  return words.map((line, index) => (
    <text key={line} className="soft-text" x={x} y={y + index * 12} textAnchor={anchor}>
      {line}
    </text>
  ));
}
