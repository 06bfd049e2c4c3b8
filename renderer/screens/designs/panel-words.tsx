// The code and size of a panel, written over everything that crosses it. Where there is no room, less is
// written; the tooltip has it all.
import type { ReactNode } from 'react';
import type { Units } from '../../parts/units.tsx';
import type { PanelMark } from './elevation-marks.ts';
import { box } from './elevation-pieces.tsx';
import { type BoxPx, labelPlace } from './label-place.ts';
import type { Scale } from './elevation-view.ts';
import { sizeWords } from './size-words.ts';

/** Whether a text of 11 to 12 px fits into so many pixels, by the width of a usual letter. */
function roomFor(text: string, roomPx: number): boolean {
  return roomPx > text.length * 6.4 + 10;
}

export function PanelWords(props: {
  readonly mark: PanelMark;
  readonly scale: Scale;
  readonly units: Units;
  readonly lit: boolean;
  /** What the words must not hide, in pixels. */
  readonly inTheWay: readonly BoxPx[];
}): ReactNode {
  const { mark, units } = props;
  const { x, y, width, height } = box(props.scale, mark);
  const size = sizeWords(mark.widthNm, mark.heightNm, units.system);
  const turned = !roomFor(size, width) && roomFor(size, height) && width > 30;
  const along = turned ? height : width;
  const showSize = turned || (roomFor(size, width) && height > 34);
  const showCode = turned || (roomFor(mark.panel, width) && height > 16);
  if (!showCode) return null;
  const onSide = mark.onSide && roomFor(`${mark.panel} on its side`, along) ? ' on its side' : '';
  const long =
    (showSize ? Math.max(size.length, mark.panel.length + onSide.length) : mark.panel.length) * 6.4;
  const deep = showSize ? 27 : 14;
  const middle = labelPlace(
    { x, y, width, height },
    turned ? { width: deep, height: long } : { width: long, height: deep },
    props.inTheWay,
  );
  return (
    <g
      className={props.lit ? 'panel-words lit' : 'panel-words'}
      transform={turned ? `rotate(-90 ${middle.x} ${middle.y})` : undefined}
      textAnchor="middle"
    >
      <text className="panel-code" x={middle.x} y={middle.y + (showSize ? -3 : 4)}>
        {mark.panel}
        {onSide}
      </text>
      {showSize ? (
        <text className="panel-size" x={middle.x} y={middle.y + 11}>
          {size}
        </text>
      ) : null}
    </g>
  );
}
