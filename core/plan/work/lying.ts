// When each gang lies on a place on the ground, out of the runs of a plan.
import type { RunDescription } from '../describe-runs.ts';
import { msOf } from '../local-time.ts';
import type { PourTurn } from '../turns-from-pours.ts';
import type { Lying } from './pads.ts';

/**
 * @param turns by id
 * @param straight those that do not touch the ground between, by the turn they leave
 */
export function lyingOf(
  runs: readonly RunDescription[],
  turns: ReadonlyMap<string, PourTurn>,
  straight: ReadonlyMap<string, PourTurn>,
  cleanMs: number,
): readonly Lying[] {
  const lying = (use: Lying['use'], from: number, to: number, id: string): readonly Lying[] => {
    const turn = turns.get(id);
    return turn === undefined || to <= from ? [] : [{ use, from, to, pour: turn.pour, turn: id }];
  };
  return runs.flatMap(({ assembly, follows, breakDown, turns: own }) => {
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined) return [];
    return [
      ...(assembly === undefined ? [] : lying('assemble', msOf(assembly.from), msOf(first.from), first.id)),
      ...follows.flatMap((follow) => {
        if (straight.has(follow.from)) return [];
        const [left, set] = [msOf(follow.gap.from), msOf(follow.gap.to)];
        const rebuilt = follow.regang === undefined ? set : msOf(follow.regang.from);
        return [
          ...lying('clean', left, Math.min(left + cleanMs, rebuilt), follow.from),
          ...lying('assemble', rebuilt, set, follow.to),
        ];
      }),
      ...lying('clean', msOf(breakDown.from), msOf(breakDown.freeAt), last.id),
    ];
  });
}
