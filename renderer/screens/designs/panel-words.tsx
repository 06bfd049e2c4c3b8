// The code and size of a panel, written over everything that crosses it.
import type { ReactNode } from 'react';
import type { Units } from '../../parts/units.tsx';
import type { PanelMark } from './elevation-marks.ts';
import { box } from './elevation-pieces.tsx';
import type { Scale } from './elevation-view.ts';
import type { BoxPx } from './label-place.ts';
import { panelLabel } from './panel-label.ts';
import { sizeWords } from './size-words.ts';

export function PanelWords(props: {
  readonly mark: PanelMark;
  readonly scale: Scale;
  readonly units: Units;
  readonly lit: boolean;
  /** What the words must not hide, in pixels. */
  readonly inTheWay: readonly BoxPx[];
}): ReactNode {
  const { mark, units } = props;
  const code = mark.onSide ? `${mark.panel} on its side` : mark.panel;
  const size = sizeWords(mark.widthNm, mark.heightNm, units.system);
  const face = box(props.scale, mark);
  const label = panelLabel(face, code, size, props.inTheWay) ?? panelLabel(face, mark.panel, size, []);
  if (label === undefined) return null;
  const two = label.lines.length > 1;
  return (
    <g
      className={props.lit ? 'panel-words lit' : 'panel-words'}
      transform={label.turned ? `rotate(-90 ${label.x} ${label.y})` : undefined}
      textAnchor="middle"
    >
      <text className="panel-code" x={label.x} y={label.y + (two ? -3 : 4)}>
        {label.lines[0]}
      </text>
      {two ? (
        <text className="panel-size" x={label.x} y={label.y + 11}>
          {label.lines[1]}
        </text>
      ) : null}
    </g>
  );
}
