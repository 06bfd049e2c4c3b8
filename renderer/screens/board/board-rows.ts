// The board's rows as the screen needs them, worked out once an answer: order, bars, words, links.
import { dateWords, timeWords, type TimeWords, weekdayOf } from '../../parts/time-words.ts';
import type { Board, BoardPour, Shortfall, Turn } from './board-types.ts';
import { rowMarkWords, type SideMarks, sideMarks } from './choice-words.ts';
import { type Link, linksOf } from './links.ts';
import { type PourBars, pourBars } from './pour-bars.ts';
import { type Then, thenOf } from './then-words.ts';

export interface PourRow {
  readonly code: string;
  readonly row: BoardPour;
  readonly bars: PourBars;
  /** What follows each gang after the strip. */
  readonly follows: readonly Then[];
  readonly turns: readonly Turn[];
  /** What was told and fixed of the gangs of each side. */
  readonly marks: { readonly a: SideMarks; readonly b: SideMarks };
  readonly shortfalls: readonly Shortfall[];
  /** What stands under the name: an open gate, what is short, or else what kind of element it is. */
  readonly state: {
    readonly gate: GateWords | null;
    readonly short: string | null;
    readonly element: string;
  };
  /** Everything of the row in one sentence, for those who hear the board; begins with the words that are seen. */
  readonly spoken: string;
}

export interface BoardModel {
  readonly board: Board;
  readonly words: TimeWords;
  readonly rows: readonly PourRow[];
  readonly byCode: ReadonlyMap<string, PourRow>;
  readonly turnsById: ReadonlyMap<string, Turn>;
  readonly links: readonly Link[];
}

export function boardModel(board: Board): BoardModel {
  const words = timeWords(board.job.timeZone);
  const turnsById = new Map(board.turns.map((turn) => [turn.id, turn]));
  const byPour = Map.groupBy(board.turns, (turn) => turn.pour);
  const shortById = new Map(board.shortfalls.map((shortfall) => [shortfall.id, shortfall]));
  const rows = board.pours
    .map((row): PourRow => {
      const turns = byPour.get(row.pour.code) ?? [];
      const follows = thenOf(turns, turnsById);
      const shortfalls = row.shortfalls.flatMap((id) => shortById.get(id) ?? []);
      const state = {
        gate: gateWords(row),
        short: shortfalls.length === 0 ? null : shortList(shortfalls),
        element: row.pour.element,
      };
      return {
        code: row.pour.code,
        row,
        bars: pourBars(row),
        follows,
        turns,
        marks: { a: sideMarks(turns, 'A'), b: sideMarks(turns, 'B') },
        shortfalls,
        state,
        spoken: spokenRow({ row, follows, state, turns }, words),
      };
    })
    .sort((one, other) => one.bars.fromMs - other.bars.fromMs || compareCodes(one.code, other.code));
  return {
    board,
    words,
    rows,
    byCode: new Map(rows.map((row) => [row.code, row])),
    turnsById,
    links: linksOf(board.turns),
  };
}

function compareCodes(one: string, other: string): number {
  return one.localeCompare(other, 'en', { numeric: true });
}

/** "short LK 94, P836 4" */
function shortList(shortfalls: readonly Shortfall[]): string {
  const most = new Map<string, number>();
  for (const { component, quantity } of shortfalls) {
    most.set(component, Math.max(quantity, most.get(component) ?? 0));
  }
  return `short ${[...most].map(([component, quantity]) => `${component} ${quantity}`).join(', ')}`;
}

function spokenRow(
  { row, follows, state, turns }: Pick<PourRow, 'row' | 'follows' | 'state' | 'turns'>,
  words: TimeWords,
): string {
  const { gate, short, element } = state;
  const marked = rowMarkWords(turns);
  const { pour, times } = row;
  const sides = times.sides.map((side) => `side ${side.side} set ${words.full(side.setFrom)}`).join(', ');
  const seen = [gate?.short, short].filter(Boolean).join(' ') || element;
  return [
    `${pour.code} ${pour.name} ${seen}: ${sides}`,
    `pour ends ${words.full(times.finishAt)}`,
    `first strip shift ${words.full(times.stripFrom)}`,
    follows.map((one) => one.words).join('; ') || 'no gangs',
    gate === null ? 'ready' : gate.text,
    ...(marked === '' ? [] : [marked]),
  ].join('. ');
}

export interface GateWords {
  /** "not ready: steel, promised Thu 12 Mar" */
  readonly text: string;
  /** "not ready: steel Thu 12" */
  readonly short: string;
  readonly late: boolean;
  /** The day on which the first of them is promised, YYYY-MM-DD. */
  readonly promised: string;
}

/** The open gate promised first, how many more there are, and whether any is late; null where none is open. */
export function gateWords(row: BoardPour): GateWords | null {
  const [first] = [...row.openGates].sort((one, other) => one.promised.localeCompare(other.promised));
  if (first === undefined) return null;
  const others = row.openGates.length - 1;
  const late = row.openGates.some((gate) => gate.late);
  const day = `${weekdayOf(first.promised)} ${Number(first.promised.slice(8))}`;
  return {
    text: `not ready: ${first.name}${others > 0 ? ` and ${others} more` : ''}, promised ${dateWords(first.promised)}${late ? ', late' : ''}`,
    short: `${late ? 'late' : 'not ready'}: ${first.name} ${day}${others > 0 ? `, +${others}` : ''}`,
    late,
    promised: first.promised,
  };
}
