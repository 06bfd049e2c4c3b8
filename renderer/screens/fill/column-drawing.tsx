// Halves of a column unfolded, to scale, with the fold as a broken line.
import { type ReactNode, useId } from 'react';
import type { PanelSystem } from '../../../core/catalogue/system.ts';
import { useUnits } from '../../parts/units.tsx';
import { drawnDesign } from './drawn-design.ts';
import { GangShape, Hatch } from './drawn-gang.tsx';
import type { Proposal } from './fill-shapes.ts';

const highPx = 240;
const mostPerNm = 40 / 304_800_000;
const leastWidthPx = 130;

export function ColumnDrawing(props: {
  readonly proposal: Proposal;
  readonly system: PanelSystem;
}): ReactNode {
  const { designs } = props.proposal;
  const units = useUnits();
  const hatch = useId();
  const most = Math.max(1, ...designs.map(({ heightNm }) => heightNm));
  const perNm = Math.min(highPx / most, mostPerNm);
  return (
    <div className="fill-halves">
      {designs.map((design) => {
        const { code, isNew, widthNm, heightNm, foldNm = widthNm } = design;
        const width = Math.max(leastWidthPx, widthNm * perNm);
        const [high, x] = [heightNm * perNm, (width - widthNm * perNm) / 2];
        return (
          <figure key={code}>
            <svg
              className="fill-faces"
              viewBox={`-2 -2 ${width + 4} ${high + 24}`}
              width={width + 4}
              height={high + 24}
              role="img"
              aria-label={`Half ${code} unfolded`}
            >
              <Hatch id={hatch} />
              <GangShape
                drawn={drawnDesign(design, props.system)}
                size={design}
                isNew={isNew}
                at={{ x, y: high, perNm }}
                hatch={hatch}
              />
              <line className="fill-fold" x1={x + foldNm * perNm} x2={x + foldNm * perNm} y1={0} y2={high} />
              <text x={x + (foldNm * perNm) / 2} y={high + 16} textAnchor="middle" className="soft-text">
                {units.length(foldNm)}
              </text>
              <text
                x={x + ((foldNm + widthNm) * perNm) / 2}
                y={high + 16}
                textAnchor="middle"
                className="soft-text"
              >
                {units.length(widthNm - foldNm)}
              </text>
            </svg>
            <figcaption>
              <strong>{code}</strong>
              {isNew ? ' new' : ''}, {units.length(heightNm)} high
              {designs.length === 1 ? ', stands twice' : ''}
            </figcaption>
          </figure>
        );
      })}
    </div>
  );
}
