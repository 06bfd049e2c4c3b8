// Loose pieces of a column: the corner pieces of its folds and opening joints, the locks that close it, its ties.
import type { PanelSystem } from '../catalogue/system.ts';
import { meetingJoints } from '../gang/meeting-joints.ts';
import type { TakeOff } from '../gang/take-off.ts';
import type { ColumnForm } from './column.ts';
import { pieceLines, tieItem } from './wall-loose.ts';
import type { LooseItem } from './wall.ts';

/** `halves` are the take-offs of half 1 and half 2. A half's locks at its own fold are in its take-off. */
export function columnLoose(
  system: PanelSystem,
  { corner }: ColumnForm,
  [one, other]: readonly [TakeOff, TakeOff],
  tiePairs: number,
): readonly LooseItem[] {
  const places = ['fold of half 1', 'fold of half 2', 'opening joint 1', 'opening joint 2'];
  const meetings = [meetingJoints(one, other, 0, system.rules), meetingJoints(other, one, 0, system.rules)];
  return [
    ...places.flatMap((where) => pieceLines(corner.pieces, 'both', 'outside-corner', where)),
    ...meetings.flatMap(({ taken }, index) => {
      const counts = new Map<string, number>();
      for (const { component, count } of taken) counts.set(component, (counts.get(component) ?? 0) + count);
      return [...counts].flatMap(([component, quantity]): readonly LooseItem[] =>
        quantity === 0
          ? []
          : [
              {
                side: 'both',
                purpose: 'opening-joint',
                component,
                quantity,
                where: `opening joint ${index + 1}`,
              },
            ],
      );
    }),
    ...(tiePairs > 0 ? [tieItem(system, tiePairs, 'column')] : []),
  ];
}
