// What was told to the crew and what a person fixed, of how a gang comes and goes: as words for phrases, and as signs for
// the tracks. The word goes with every sign.
import type { Turn } from './board-types.ts';

export type ToldMark = Turn['told']['before'];

export interface EndMark {
  readonly told: ToldMark;
  readonly fixed: boolean;
}

/** Of one side of a pour: how its gangs come, and how they go. */
export interface SideMarks {
  readonly before: EndMark;
  readonly after: EndMark;
}

export function arrivalMark({ told, fixed }: Turn): EndMark {
  return { told: told.before, fixed: fixed.before };
}

export function departureMark({ told, fixed }: Turn): EndMark {
  return { told: told.after, fixed: fixed.after || fixed.noRegang };
}

/** "told", "told otherwise", "fixed", "told, fixed", or nothing. */
export function markWords({ told, fixed }: EndMark): string {
  const ofTold = told === null ? [] : [told === 'followed' ? 'told' : 'told otherwise'];
  return [...ofTold, ...(fixed ? ['fixed'] : [])].join(', ');
}

/** The same after a phrase: " · told". */
export function markedWords(mark: EndMark): string {
  const words = markWords(mark);
  return words === '' ? '' : ` · ${words}`;
}

/** The gangs of a side together: one told otherwise is what must be seen. */
export function sideMarks(turns: readonly Turn[], side: 'A' | 'B'): SideMarks {
  const own = turns.filter((turn) => turn.side === side);
  return {
    before: together(own.map(arrivalMark)),
    after: together(own.map(departureMark)),
  };
}

function together(marks: readonly EndMark[]): EndMark {
  const told = marks.map((mark) => mark.told);
  return {
    told: told.includes('changed') ? 'changed' : told.includes('followed') ? 'followed' : null,
    fixed: marks.some(({ fixed }) => fixed),
  };
}

/** "3 told, 1 told otherwise, 2 fixed" of all comings and goings of a pour; nothing where nothing is. */
export function rowMarkWords(turns: readonly Turn[]): string {
  const marks = turns.flatMap((turn) => [arrivalMark(turn), departureMark(turn)]);
  const count = (of: (mark: EndMark) => boolean): number => marks.filter(of).length;
  const parts = [
    [count(({ told }) => told === 'followed'), 'told'],
    [count(({ told }) => told === 'changed'), 'told otherwise'],
    [count(({ fixed }) => fixed), 'fixed'],
  ] as const;
  return parts
    .filter(([many]) => many > 0)
    .map(([many, words]) => `${many} ${words}`)
    .join(', ');
}
