// What stands of all that was told: every turn has one arrival of its gang and one departure, and the last word on each
// counts, until it is released.
import { never } from '../answer.ts';
import type { Instruction } from './choices.ts';

/** Oldest first. */
export function toldNow(
  tellings: readonly {
    readonly instructions: readonly Instruction[];
    readonly released: readonly Instruction[];
  }[],
): readonly Instruction[] {
  const standing = new Map<string, Instruction>();
  for (const { instructions, released } of tellings) {
    for (const each of released) for (const place of placesOf(each)) standing.delete(place);
    for (const each of instructions) for (const place of placesOf(each)) standing.set(place, each);
  }
  // One that was overruled at one of its two places is no longer told at all.
  return [...new Set(standing.values())].filter((each) =>
    placesOf(each).every((place) => standing.get(place) === each),
  );
}

/** The arrivals and departures that an instruction speaks of. */
export function placesOf(told: Instruction): readonly string[] {
  switch (told.kind) {
    case 'follow':
      return [`after ${told.from}`, `before ${told.to}`];
    case 'assemble':
      return [`before ${told.turn}`];
    case 'break-down':
      return [`after ${told.turn}`];
    default:
      return never(told);
  }
}
