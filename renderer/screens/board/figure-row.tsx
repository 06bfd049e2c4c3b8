// Under the days: which of them rest on a figure that was estimated, taken from a list, or is old.
import { memo, type ReactNode } from 'react';
import { dateWords } from '../../parts/time-words.ts';
import { figureWords, type YardNote } from '../../parts/yard-note-words.ts';
import type { DayScale } from './day-scale.ts';
import { weakRuns } from './weak-runs.ts';
import '../../style/yard-strip.css';

export const FigureRow = memo(function FigureRow(props: {
  readonly scale: DayScale;
  readonly notes: readonly YardNote[];
}): ReactNode {
  const runs = weakRuns(props.scale.days);
  if (runs.length === 0) return null;
  const seen = new Set(runs.flatMap(({ components }) => components));
  const figures = props.notes.filter(({ kind, component }) => kind === 'figure' && seen.has(component));
  const words = figures.map(figureWords).join(', ');
  return (
    <div className="foot-row">
      <div className="foot-head soft">Not counted lately</div>
      <div className="foot-chart" style={{ width: props.scale.width }}>
        {runs.map((run) => (
          <span
            key={run.from}
            className="figure-run"
            style={{ left: run.x, width: run.width }}
            title={`${dateWords(run.from)} to ${dateWords(run.to)} rest on ${words}`}
          >
            {run.components.join(', ')}
          </span>
        ))}
      </div>
      <div className="foot-then soft">{words}</div>
    </div>
  );
});
