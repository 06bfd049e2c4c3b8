// Halves of a column unfolded, to scale, with the fold as a broken line.
import type { ReactNode } from 'react';
import type { Panel } from '../../../core/catalogue/component.ts';
import type { Proposal } from './fill-shapes.ts';

const highPx = 200;

export function ColumnDrawing(props: {
  readonly proposal: Proposal;
  readonly panels: ReadonlyMap<string, Panel>;
}): ReactNode {
  const { designs } = props.proposal;
  const most = Math.max(1, ...designs.map(({ heightNm }) => heightNm));
  const perNm = highPx / most;
  return (
    <div className="fill-halves">
      {designs.map(({ code, isNew, geometry, widthNm, heightNm, foldNm }) => (
        <figure key={code}>
          <svg
            viewBox={`-1 -1 ${widthNm * perNm + 2} ${heightNm * perNm + 2}`}
            width={widthNm * perNm + 2}
            height={heightNm * perNm + 2}
            role="img"
            aria-label={`Half ${code} unfolded`}
          >
            {geometry.panels.map(({ panel, xNm, yNm, onSide }) => {
              const found = props.panels.get(panel);
              const [wide, high] = onSide
                ? [found?.heightNm ?? 0, found?.widthNm ?? 0]
                : [found?.widthNm ?? 0, found?.heightNm ?? 0];
              return (
                <rect
                  key={`${xNm} ${yNm}`}
                  className="fill-panel"
                  x={xNm * perNm}
                  y={(heightNm - yNm - high) * perNm}
                  width={wide * perNm}
                  height={high * perNm}
                />
              );
            })}
            {foldNm === undefined ? null : (
              <line
                className="fill-fold"
                x1={foldNm * perNm}
                x2={foldNm * perNm}
                y1={0}
                y2={heightNm * perNm}
              />
            )}
          </svg>
          <figcaption>
            {code}
            {isNew ? ' new' : ''}, unfolded; the broken line is its corner
          </figcaption>
        </figure>
      ))}
    </div>
  );
}
