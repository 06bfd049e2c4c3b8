// Dimension lines along the edges of the gang, ticks at every end, the numbers in the reader's units.
import type { ReactNode } from 'react';
import type { Units } from '../../parts/units.tsx';
import type { DimensionChains, Stretch } from './dimension-chains.ts';
import { dimensionLabels, wordsPx } from './dimension-labels.ts';
import { type Scale, toPx } from './elevation-view.ts';
import { dimensionWords } from './size-words.ts';

interface ChainProps {
  readonly stretches: readonly Stretch[];
  readonly scale: Scale;
  readonly units: Units;
}

export function Dimensions(props: {
  readonly chains: DimensionChains;
  readonly scale: Scale;
  readonly units: Units;
}): ReactNode {
  const { chains, scale, units } = props;
  const corner = toPx(scale, { xNm: chains.width.fromNm, yNm: chains.height.fromNm });
  const far = toPx(scale, { xNm: chains.width.toNm, yNm: chains.height.toNm });
  const parts = { scale, units };
  const deepest = Math.max(
    0,
    ...dimensionLabels(chain(chains.bottom), scale.pxPerNm, (nm) => dimensionWords(nm, units.system)).map(
      ({ level }) => level,
    ),
  );
  const under = chain(chains.bottom).length > 0 ? 46 + 9 * deepest : 22;
  const beside = chain(chains.left).length > 0 ? 66 : 42;
  return (
    <g className="dimensions">
      <LevelChain stretches={chain(chains.bottom)} y={corner.y + 22} from={corner.y} {...parts} />
      <LevelChain stretches={[chains.width]} y={corner.y + under} from={corner.y} {...parts} />
      <LevelChain stretches={chain(chains.top)} y={far.y - 46} from={far.y} {...parts} />
      <UprightChain stretches={chain(chains.left)} x={corner.x - 42} from={corner.x} {...parts} />
      <UprightChain stretches={[chains.height]} x={corner.x - beside} from={corner.x} {...parts} />
      <UprightChain stretches={chain(chains.right)} x={far.x + 46} from={far.x} {...parts} />
    </g>
  );
}

/** One panel over the whole length needs no chain beside the overall dimension. */
function chain(stretches: readonly Stretch[]): readonly Stretch[] {
  return stretches.length > 1 ? stretches : [];
}

function LevelChain(props: ChainProps & { readonly y: number; readonly from: number }): ReactNode {
  const { y, scale, units } = props;
  const labels = dimensionLabels(props.stretches, scale.pxPerNm, (nm) => dimensionWords(nm, units.system));
  return labels.map(({ stretch: { fromNm, toNm }, words, level }) => {
    const [x1, x2] = [toPx(scale, { xNm: fromNm, yNm: 0 }).x, toPx(scale, { xNm: toNm, yNm: 0 }).x];
    return (
      <g key={`${fromNm} ${toNm}`}>
        <line className="dimension-reach" x1={x1} x2={x1} y1={props.from} y2={y} />
        <line className="dimension-reach" x1={x2} x2={x2} y1={props.from} y2={y} />
        <path
          className="dimension-line"
          d={`M${x1} ${y}H${x2}M${x1 - 3} ${y + 3}l6 -6M${x2 - 3} ${y + 3}l6 -6`}
        />
        <text x={(x1 + x2) / 2} y={level === 0 ? y - 4 : y + 1 + 11 * level} textAnchor="middle">
          {words}
        </text>
      </g>
    );
  });
}

function UprightChain(props: ChainProps & { readonly x: number; readonly from: number }): ReactNode {
  const { x, scale } = props;
  return props.stretches.map(({ fromNm, toNm }) => {
    const [y1, y2] = [toPx(scale, { xNm: 0, yNm: fromNm }).y, toPx(scale, { xNm: 0, yNm: toNm }).y];
    const words = dimensionWords(toNm - fromNm, props.units.system);
    const middle = (y1 + y2) / 2;
    const fits = y1 - y2 > wordsPx(words);
    return (
      <g key={`${fromNm} ${toNm}`}>
        <line className="dimension-reach" x1={props.from} x2={x} y1={y1} y2={y1} />
        <line className="dimension-reach" x1={props.from} x2={x} y1={y2} y2={y2} />
        <path
          className="dimension-line"
          d={`M${x} ${y1}V${y2}M${x - 3} ${y1 + 3}l6 -6M${x - 3} ${y2 + 3}l6 -6`}
        />
        <text
          x={x - 4}
          y={fits ? middle : middle + 4}
          textAnchor={fits ? 'middle' : 'end'}
          transform={fits ? `rotate(-90 ${x - 4} ${middle})` : undefined}
        >
          {words}
        </text>
      </g>
    );
  });
}
