// What is told and what is fixed of every turn: how its gang comes to it and how it leaves. Boards and sheets mark it.
import type { FixedChoice, Instruction } from './choices.ts';

/** `followed`: the plan does as told; `changed`: it does something else. */
export type ToldMark = 'followed' | 'changed' | null;

export interface TurnMarks {
  readonly told: { readonly before: ToldMark; readonly after: ToldMark };
  readonly fixed: { readonly before: boolean; readonly after: boolean; readonly noRegang: boolean };
}

export interface MarkedChoices {
  /** What stands told of turns in the plan. */
  readonly told: readonly Instruction[];
  /** Of those, what the plan does not follow. */
  readonly changed: readonly Instruction[];
  /** Those that the plan obeys. */
  readonly fixed: readonly FixedChoice[];
}

export const unmarked: TurnMarks = {
  told: { before: null, after: null },
  fixed: { before: false, after: false, noRegang: false },
};

/** By turn; a turn of which nothing is told or fixed has no entry. */
export function turnMarks({ told, changed, fixed }: MarkedChoices): ReadonlyMap<string, TurnMarks> {
  const marks = new Map<string, TurnMarks>();
  const mark = (turn: string, by: (marks: TurnMarks) => TurnMarks): void => {
    marks.set(turn, by(marks.get(turn) ?? unmarked));
  };
  const different = new Set(changed.map((each) => JSON.stringify(each)));
  for (const each of told) {
    const is = different.has(JSON.stringify(each)) ? 'changed' : 'followed';
    const { arrivesAt, leaves } = sidesOf(each);
    if (arrivesAt !== null) mark(arrivesAt, (now) => ({ ...now, told: { ...now.told, before: is } }));
    if (leaves !== null) mark(leaves, (now) => ({ ...now, told: { ...now.told, after: is } }));
  }
  for (const each of fixed) {
    if (each.kind === 'no-regang') {
      mark(each.turn, (now) => ({ ...now, fixed: { ...now.fixed, noRegang: true } }));
      continue;
    }
    const { arrivesAt, leaves } = sidesOf(each);
    if (arrivesAt !== null) mark(arrivesAt, (now) => ({ ...now, fixed: { ...now.fixed, before: true } }));
    if (leaves !== null) mark(leaves, (now) => ({ ...now, fixed: { ...now.fixed, after: true } }));
  }
  return marks;
}

function sidesOf(choice: Instruction): { readonly arrivesAt: string | null; readonly leaves: string | null } {
  if (choice.kind === 'follow') return { arrivesAt: choice.to, leaves: choice.from };
  return choice.kind === 'assemble'
    ? { arrivesAt: choice.turn, leaves: null }
    : { arrivesAt: null, leaves: choice.turn };
}
