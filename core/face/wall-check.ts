// Can a wall be filled as it was entered? What is out of scope is refused by name and left to the designer, so that
// nobody counts half of it.
import { type Answer, answer, refuse } from '../answer.ts';
import { shown } from '../gang/findings.ts';
import type { Turn, Wall } from './wall.ts';

/** A turn as it may be entered: one of another angle is known only to be refused. */
export type EnteredTurn = Turn | { readonly turn: Turn; readonly angleDeg: number };
export type OutOfScope = 'single-sided' | 'battered' | 'curved';

const outOfScopeWords: Readonly<Record<OutOfScope, string>> = {
  'single-sided': 'a wall formed on one side only',
  battered: 'a battered wall',
  curved: 'a curved wall',
};

/** Refuses 'ask-the-designer'; otherwise the turns, all of them square. */
export function squareTurns(
  turns: readonly EnteredTurn[],
  outOfScope: readonly OutOfScope[],
): Answer<readonly Turn[]> {
  const angle = turns.find((turn) => typeof turn !== 'string' && turn.angleDeg !== 90);
  const what = [
    ...outOfScope.map((each) => outOfScopeWords[each]),
    ...(typeof angle === 'object' ? [`a corner of ${angle.angleDeg} degrees`] : []),
  ];
  if (what.length > 0)
    return refuse('ask-the-designer', `Gangs are not proposed for ${what.join(' and ')}: ask the designer.`, {
      field: outOfScope.length > 0 ? 'wall.outOfScope' : 'wall.turns',
    });
  return answer(turns.map((turn) => (typeof turn === 'string' ? turn : turn.turn)));
}

/** Refuses turns that do not fit the legs and a closed wall that does not come back to its start. */
export function checkWall(wall: Wall): Answer<Wall> {
  const { legs, turns, closed } = wall;
  const wanted = closed ? legs.length : legs.length - 1;
  if (turns.length !== wanted)
    return refuse(
      'turns-do-not-fit',
      `${legs.length} legs of ${closed ? 'a closed' : 'an open'} wall have ${wanted} turns, ${turns.length} were given.`,
      { field: 'wall.turns' },
    );
  if (!closed) return answer(wall);
  const turned = turns.reduce((sum, turn) => sum + (turn === 'left' ? 1 : -1), 0);
  let [x, y, heading] = [0, 0, 0];
  for (const [index, { lengthNm }] of legs.entries()) {
    if (heading % 2 === 0) x += heading === 0 ? lengthNm : -lengthNm;
    else y += heading === 1 ? lengthNm : -lengthNm;
    heading = (heading + (turns[index] === 'left' ? 1 : 3)) % 4;
  }
  if (Math.abs(turned) !== 4 || x !== 0 || y !== 0)
    return refuse(
      'wall-not-closed',
      Math.abs(turned) === 4
        ? `The legs do not come back to where they began: ${shown(Math.abs(x))} and ${shown(Math.abs(y))} are left.`
        : 'The turns of a closed wall do not go once round.',
      { field: 'wall.legs', hint: 'Maybe a leg is measured on the other side.' },
    );
  return answer(wall);
}
