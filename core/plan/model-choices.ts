// Told instructions and fixed choices by the places of their turns, as the search reads them. What is told has a price;
// what is fixed leaves only those plans that obey it.
import { never } from '../answer.ts';
import type { FixedChoice, Instruction } from './choices.ts';

/** In place of a turn: a run begins or ends here. */
export const runEnds = -1;
/** In place of a turn: nothing is fixed. */
export const leftOpen = -2;

/** A follow has both turns; an assembly no earlier one, a break-down no later one. */
export interface ToldPlace {
  readonly instruction: Instruction;
  readonly earlier: number;
  readonly later: number;
}

export interface FixedPlaces {
  /** Of every turn: the one it follows, `runEnds` where it begins its run, or `leftOpen`. */
  readonly before: Int32Array;
  /** The same for what follows it. */
  readonly after: Int32Array;
  /** 1: the gang of the turn is not made into another. */
  readonly keepsDesign: Uint8Array;
}

/** Each instruction once, however often it is given. The turns must be there. */
export function toldPlaces(told: readonly Instruction[], place: ReadonlyMap<string, number>): ToldPlace[] {
  const found = new Map<string, ToldPlace>();
  for (const instruction of told) {
    const { earlier, later } = placesOf(instruction, place);
    found.set(`${earlier} ${later}`, { instruction, earlier, later });
  }
  return [...found.values()];
}

export function placesOf(
  told: Instruction,
  place: ReadonlyMap<string, number>,
): { readonly earlier: number; readonly later: number } {
  const of = (id: string): number => place.get(id) ?? runEnds;
  switch (told.kind) {
    case 'follow':
      return { earlier: of(told.from), later: of(told.to) };
    case 'assemble':
      return { earlier: runEnds, later: of(told.turn) };
    case 'break-down':
      return { earlier: of(told.turn), later: runEnds };
    default:
      return never(told);
  }
}

/** The choices must not contradict each other. */
export function fixedPlaces(fixed: readonly FixedChoice[], turnIds: readonly string[]): FixedPlaces {
  const place = new Map(turnIds.map((id, index) => [id, index]));
  const before = new Int32Array(turnIds.length).fill(leftOpen);
  const after = new Int32Array(turnIds.length).fill(leftOpen);
  const keepsDesign = new Uint8Array(turnIds.length);
  for (const choice of fixed) {
    if (choice.kind === 'no-regang') {
      keepsDesign[place.get(choice.turn) ?? 0] = 1;
      continue;
    }
    const { earlier, later } = placesOf(choice, place);
    if (earlier >= 0) after[earlier] = later;
    if (later >= 0) before[later] = earlier;
  }
  return { before, after, keepsDesign };
}

/** Whether the plan does what was told. */
export function isFollowed({ earlier, later }: ToldPlace, follower: Int32Array, leader: Int32Array): boolean {
  return earlier >= 0 ? follower[earlier] === later : leader[later] === runEnds;
}

/** The turn that each turn follows, or -1. */
export function leadersOf(follower: Int32Array): Int32Array {
  const leader = new Int32Array(follower.length).fill(runEnds);
  for (const [turn, later] of follower.entries()) if (later >= 0) leader[later] = turn;
  return leader;
}
