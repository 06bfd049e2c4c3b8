// What the counters found, line by line: the last figure of each counter stands, an earlier one of the same counter
// was recounted. Figures of one line entered together add up, as 61 loose and a bag of about 20.
import { type Condition, conditions } from './movement.ts';
import type { CountEntry, CountLine, StockCount } from './stock-count.ts';

export type ByCondition = Readonly<Partial<Record<Condition, number>>>;

export interface CounterFigure {
  readonly counter: 1 | 2;
  readonly at: string;
  readonly who: string;
  readonly quantity: number;
  readonly byCondition: ByCondition;
  /** Half the width of what the figure may be off by. */
  readonly uncertainty: number;
  readonly notes: readonly string[];
  /** Earlier figures of this counter that this one took the place of. */
  readonly recounts: number;
}

export interface CountedLine extends CountLine {
  /** At most one a counter, in the order of the counters. */
  readonly figures: readonly CounterFigure[];
}

/** The lines of the count, then those that counters found beside them. */
export function countedLines(
  count: Pick<StockCount, 'lines'>,
  entries: readonly CountEntry[],
): readonly CountedLine[] {
  const figures = new Map<string, Map<1 | 2, CounterFigure>>();
  const lines = new Map<string, CountLine>(count.lines.map((line) => [lineKey(line), line]));
  for (const entry of [...entries].sort((one, other) => one.number - other.number)) {
    const found = new Map<string, CountEntry['lines'][number][]>();
    for (const line of entry.lines) {
      const key = lineKey(line);
      const { location, component, owner } = line;
      if (!lines.has(key)) lines.set(key, { location, component, owner });
      found.set(key, [...(found.get(key) ?? []), line]);
    }
    for (const [key, parts] of found) {
      const ofLine = figures.get(key) ?? new Map<1 | 2, CounterFigure>();
      const before = ofLine.get(entry.counter);
      ofLine.set(entry.counter, figureOf(entry, parts, before === undefined ? 0 : before.recounts + 1));
      figures.set(key, ofLine);
    }
  }
  return [...lines].map(([key, line]) => ({
    ...line,
    figures: [...(figures.get(key)?.values() ?? [])].sort((one, other) => one.counter - other.counter),
  }));
}

function figureOf(
  entry: CountEntry,
  parts: readonly CountEntry['lines'][number][],
  recounts: number,
): CounterFigure {
  const byCondition: Partial<Record<Condition, number>> = {};
  for (const { condition, quantity } of parts)
    byCondition[condition] = (byCondition[condition] ?? 0) + quantity;
  return {
    counter: entry.counter,
    at: entry.at,
    who: entry.who,
    quantity: sumOf(byCondition),
    byCondition,
    uncertainty: parts.reduce((sum, { uncertainty }) => sum + (uncertainty ?? 0), 0),
    notes: parts.flatMap(({ note }) => note ?? []),
    recounts,
  };
}

export function sumOf(byCondition: ByCondition): number {
  return conditions.reduce((sum, condition) => sum + (byCondition[condition] ?? 0), 0);
}

/** One text for a line of a count. */
export function lineKey({ location, component, owner }: CountLine): string {
  return JSON.stringify([location, component, owner]);
}

/** Whether two lines speak of the same pieces: the same place and component, and one owner or every one. */
export function overlap(one: CountLine, other: CountLine): boolean {
  return (
    one.location === other.location &&
    one.component === other.component &&
    (one.owner === null || other.owner === null || one.owner === other.owner)
  );
}
