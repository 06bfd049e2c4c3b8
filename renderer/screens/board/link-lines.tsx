// The lines from one turn to the next over the rows: solid where a gang flies on, dashed with a notch where
// it is re-ganged. Those of the chosen pour stand out and carry words.
import { memo, type ReactNode } from 'react';
import type { DayScale } from './day-scale.ts';
import { type Link, linkPath } from './links.ts';
import type { RowMetrics } from './metrics.ts';

interface LinkLinesProps {
  readonly links: readonly Link[];
  /** Top of each shown pour's row. */
  readonly tops: ReadonlyMap<string, number>;
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
  readonly strong: boolean;
}

export const LinkLines = memo(function LinkLines(props: LinkLinesProps): ReactNode {
  const { scale, metrics, tops } = props;
  const trackY = (side: 'A' | 'B'): number => (side === 'A' ? metrics.a : metrics.b) + metrics.track / 2;
  return (
    <g className={props.strong ? 'links strong' : 'links'}>
      {props.links.map((link) => {
        const from = tops.get(link.fromPour);
        const to = tops.get(link.toPour);
        if (from === undefined || to === undefined || !scale.shows(link.fromMs, link.toMs + 1)) return null;
        const [x1, x2] = [scale.x(link.fromMs), scale.x(link.toMs)];
        const [y1, y2] = [from + trackY(link.fromSide), to + trackY(link.toSide)];
        const middle = (y1 + y2) / 2;
        const corner = Math.max(x1 + 3, x2 - 7);
        return (
          <g key={link.key} className={link.how === 'regang' ? 'link regang' : 'link'}>
            <path d={linkPath(x1, y1, x2, y2)} />
            {link.how === 'regang' ? (
              <path className="notch" d={`M${corner - 4} ${middle - 3}h8M${corner - 4} ${middle + 3}h8`} />
            ) : null}
          </g>
        );
      })}
      {props.strong ? <LinkWords {...props} /> : null}
    </g>
  );
});

/** One label a pair of pours, over the row where the gangs arrive, each on a line of its own. */
function LinkWords(props: LinkLinesProps): ReactNode {
  const { scale, tops, metrics } = props;
  const lines = new Map<string, { readonly words: string[]; readonly x: number; readonly y: number }>();
  const perRow = new Map<string, number>();
  for (const link of props.links) {
    const top = tops.get(link.toPour);
    if (top === undefined || !tops.has(link.fromPour) || link.toMs >= scale.toMs) continue;
    const key = `${link.fromPour}>${link.toPour}`;
    const words = `${link.words} from ${link.fromPour}`;
    const line = lines.get(key);
    if (line !== undefined) {
      if (!line.words.includes(words)) line.words.push(words);
      continue;
    }
    const before = perRow.get(link.toPour) ?? 0;
    perRow.set(link.toPour, before + 1);
    lines.set(key, { words: [words], x: scale.x(link.toMs) - 2, y: top - 3 - before * (metrics.text + 5) });
  }
  return [...lines].map(([key, line]) => {
    const words = line.words.join(', ');
    const width = words.length * metrics.text * 0.53 + 8;
    const x = Math.max(0, Math.min(line.x, scale.width - width));
    const y = Math.max(line.y, metrics.text);
    return (
      <g key={key} className="link-words">
        <rect x={x} y={y - metrics.text} width={width} height={metrics.text + 4} />
        <text x={x + 4} y={y}>
          {words}
        </text>
      </g>
    );
  });
}
