// The wall from above, to scale, as it is typed: its concrete, which side is which, where it begins and ends.
import type { ReactNode } from 'react';
import type { Asked } from './fill-shapes.ts';
import { type PlanPoint, planFaces } from './plan-places.ts';

const box = { width: 300, height: 170, margin: 26 };

export function PlanDrawing(props: { readonly wall: NonNullable<Asked['wall']> }): ReactNode {
  const { legs, thicknessNm, closed } = props.wall;
  const turns = props.wall.turns.filter((turn) => typeof turn === 'string');
  const { a, b } = planFaces(
    legs.map(({ lengthNm }) => lengthNm),
    turns,
    thicknessNm,
  );
  const all = [...a, ...b];
  const [left, right] = [Math.min(...all.map((p) => p.xNm)), Math.max(...all.map((p) => p.xNm))];
  const [low, high] = [Math.min(...all.map((p) => p.yNm)), Math.max(...all.map((p) => p.yNm))];
  const perNm = Math.min(
    (box.width - 2 * box.margin) / Math.max(1, right - left),
    (box.height - 2 * box.margin) / Math.max(1, high - low),
  );
  const place = ({ xNm, yNm }: PlanPoint): readonly [number, number] => [
    (box.width - (right - left) * perNm) / 2 + (xNm - left) * perNm,
    (box.height + (high - low) * perNm) / 2 - (yNm - low) * perNm,
  ];
  const line = (points: readonly PlanPoint[]): string =>
    points.map((point) => place(point).join(',')).join(' ');
  const [first, second] = [a[0], a[1]];
  const [firstB, secondB] = [b[0], b[1]];
  if (first === undefined || second === undefined || firstB === undefined || secondB === undefined)
    return null;
  const middle = (one: PlanPoint, other: PlanPoint): readonly [number, number] =>
    place({ xNm: (one.xNm + other.xNm) / 2, yNm: (one.yNm + other.yNm) / 2 });
  const [ax, ay] = middle(first, second);
  const [bx, by] = middle(firstB, secondB);
  const [sx, sy] = place(first);
  const legWords = `${legs.length} leg${legs.length === 1 ? '' : 's'}${closed ? ', closed' : ''}`;
  return (
    <svg
      className="fill-plan"
      viewBox={`0 0 ${box.width} ${box.height}`}
      role="img"
      aria-label={`Plan of the wall: ${legWords}`}
    >
      <polygon className="fill-concrete" points={line([...a, ...b.toReversed()])} />
      <polyline className="fill-face" points={line(a)} />
      <polyline className="fill-face" points={line(b)} />
      <text x={ax} y={ay + 15} textAnchor="middle">
        side A
      </text>
      <text x={bx} y={by - 7} textAnchor="middle">
        side B
      </text>
      <circle className="fill-start" cx={sx} cy={sy} r="3" />
      <text x={Math.max(20, sx - 6)} y={sy + 15} textAnchor="middle" className="soft-text">
        start
      </text>
    </svg>
  );
}
