// Both sides with their gangs as a plan to scale, and in words that can be rewritten.
import { type ReactNode, useState } from 'react';
import { useCore } from '../../client/core.tsx';
import { timeWords } from '../../parts/time-words.ts';
import { gangsText, readGangs } from './gangs-text.ts';
import type { PartProps } from './pour-detail.tsx';
import { PourPlan } from './pour-plan.tsx';
import type { Pour, PourSide } from './pour-shapes.ts';

export function SidesPart(props: PartProps): ReactNode {
  const { row, context } = props;
  const words = timeWords(context.timeZone);
  const designs = useCore('design.list', {});
  return (
    <>
      <PourPlan sides={row.pour.sides} designs={designs.data?.designs ?? []} />
      {row.pour.sides.map((side) => {
        const times = row.times.sides.find((one) => one.side === side.side);
        return (
          <div key={side.side} className="side-line">
            <h3>Side {side.side}</h3>
            <span className="soft">
              {times === undefined ? '' : `set ${words.full(times.setFrom)} to ${words.full(times.setTo)}`}
            </span>
            <GangsField key={gangsText(side.gangs, context.system)} {...props} side={side} />
          </div>
        );
      })}
    </>
  );
}

function GangsField(props: PartProps & { readonly side: PourSide }): ReactNode {
  const { row, context, edits, side } = props;
  const stands = gangsText(side.gangs, context.system);
  const [text, setText] = useState(stands);
  const [why, setWhy] = useState<string | null>(null);
  const take = (): void => {
    if (text === stands) return;
    const read = readGangs(text, side.gangs, context.system);
    if (!read.ok) {
      setWhy(`${read.error.message} ${read.error.hint ?? ''}`);
      return;
    }
    setWhy(null);
    void edits.change(
      row.pour.code,
      (pour) => withGangs(pour, side.side, read.value),
      `${row.pour.code}: gangs of side ${side.side}`,
    );
  };
  return (
    <>
      <input
        className="gangs-field"
        aria-label={`Gangs of side ${side.side}`}
        aria-invalid={why !== null}
        placeholder="no gangs; write as GA at 0, GB at 12'-0&quot;"
        value={text}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') {
            setText(stands);
            setWhy(null);
          }
        }}
      />
      {why === null ? null : (
        <span className="field-error" role="alert">
          {why}
        </span>
      )}
    </>
  );
}

function withGangs(pour: Pour, name: 'A' | 'B', gangs: PourSide['gangs']): Pour {
  const [a, b] = pour.sides;
  return { ...pour, sides: name === 'A' ? [{ ...a, gangs }, b] : [a, { ...b, gangs }] };
}
