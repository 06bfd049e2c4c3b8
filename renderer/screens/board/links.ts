// The lines from one turn to the next. Gangs of one design that go the same way are one line with their
// number on it. A line runs level and upright only, as on a drawing.
import type { Turn } from './board-types.ts';
import { departureMark, markedWords } from './choice-words.ts';

export interface Link {
  readonly key: string;
  readonly how: 'fly-on' | 'regang';
  readonly fromPour: string;
  readonly fromSide: 'A' | 'B';
  readonly toPour: string;
  readonly toSide: 'A' | 'B';
  readonly fromMs: number;
  readonly toMs: number;
  readonly words: string;
}

export function linksOf(turns: readonly Turn[]): readonly Link[] {
  const byId = new Map(turns.map((turn) => [turn.id, turn]));
  const links = new Map<string, { readonly turn: Turn; readonly next: Turn; count: number }>();
  for (const turn of turns) {
    if (turn.after.how === 'break-down') continue;
    const next = byId.get(turn.after.turn);
    if (next === undefined) continue;
    const marked = markedWords(departureMark(turn));
    const key = [
      turn.pour,
      turn.side,
      next.pour,
      next.side,
      turn.after.how,
      turn.design,
      next.design,
      marked,
    ].join('>');
    const link = links.get(key);
    if (link === undefined) links.set(key, { turn, next, count: 1 });
    else link.count += 1;
  }
  return [...links].map(([key, { turn, next, count }]) => {
    const gangs = count === 1 ? turn.design : `${count} ${turn.design}`;
    const regang = turn.after.how === 'regang';
    return {
      key,
      how: regang ? 'regang' : 'fly-on',
      fromPour: turn.pour,
      fromSide: turn.side,
      toPour: next.pour,
      toSide: next.side,
      fromMs: Date.parse(turn.to),
      toMs: Date.parse(next.from),
      words: `${
        regang ? `${gangs} to ${next.design}: re-gang` : `${gangs} fly on`.replace(/^(\D+) fly/u, '$1 flies')
      }${markedWords(departureMark(turn))}`,
    };
  });
}

/** Level to the corner, upright to the other row, level into the block it ends at. */
export function linkPath(x1: number, y1: number, x2: number, y2: number): string {
  const corner = Math.max(x1 + 3, x2 - 7);
  return `M${x1} ${y1}H${corner}V${y2}H${Math.max(x2, corner)}`;
}
