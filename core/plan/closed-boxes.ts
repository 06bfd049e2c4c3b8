// A form that stands as a closed box inside concrete, as the inner side of a core, is held in by it on all sides:
// something in it must be drawn in before it comes off, a stripping corner or a pull-out strip.
import type { EdgeKind } from '../catalogue/edges.ts';
import type { PourDesign } from './meeting-locks.ts';
import type { PourFinding } from './pour-findings.ts';
import type { Pour, PourSide } from './pours.ts';

/** A stop for every side that is a closed box and has no loose piece that can be drawn in. */
export function boxFindings(pour: Pour, designs: ReadonlyMap<string, PourDesign>): PourFinding[] {
  return pour.sides.flatMap((side) => {
    const known = side.gangs.flatMap(({ design }) => designs.get(design) ?? []);
    const [shrinking] = known.flatMap((design) => design.shrinking ?? []);
    if (shrinking === undefined || !isClosedBox(side, designs)) return [];
    const drawnIn = pour.loose.some(
      (line) => line.quantity > 0 && line.side !== otherOf(side) && shrinking.has(line.component),
    );
    if (drawnIn) return [];
    return [
      {
        rule: 'box-shrinks',
        severity: 'stop' as const,
        message: `Side ${side.side} is a closed box and none of its loose pieces can be drawn in: it needs a stripping corner or a pull-out strip.`,
        where: `${pour.code}, side ${side.side}`,
      },
    ];
  });
}

function otherOf({ side }: PourSide): 'A' | 'B' {
  return side === 'A' ? 'B' : 'A';
}

/**
 * Going along a side and from its end back to its start, inside corners turn one way and outside corners the
 * other: four more inside ones are once round. A corner is where both edges that face each other are of its kind.
 */
function isClosedBox({ side, gangs }: PourSide, designs: ReadonlyMap<string, PourDesign>): boolean {
  const along = [...gangs]
    .sort((one, other) => one.atNm - other.atNm)
    .map(({ design }) => designs.get(design)?.edges);
  // Seen from its back, side B runs the other way along the wall.
  const [ends, starts] = side === 'A' ? (['right', 'left'] as const) : (['left', 'right'] as const);
  const corners = along.map((edges, index): number => {
    const next = along[(index + 1) % along.length];
    return turn(edges?.[ends], next?.[starts]);
  });
  return corners.reduce((sum, each) => sum + each, 0) === 4;
}

function turn(one: EdgeKind | undefined, other: EdgeKind | undefined): number {
  if (one !== other) return 0;
  if (one === 'inside-corner') return 1;
  return one === 'outside-corner' ? -1 : 0;
}
