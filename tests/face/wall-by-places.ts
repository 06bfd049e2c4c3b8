// A second reading of a proposal that knows only geometry: where every panel and tie hole of a wall stands in the plan,
// as points of the site, from legs, turns and the drawings of the gangs. Shares nothing with what filled the wall.
import type { Panel } from '../../core/catalogue/component.ts';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { Wall, WallProposal } from '../../core/face/wall.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

export interface LegInPlan {
  /** Where the leg's face of side A begins. */
  readonly from: Point;
  /** Along the leg, and from side A's face to side B's. */
  readonly along: Point;
  readonly across: Point;
  readonly lengthNm: number;
  /** Side B's face in the measure of side A. */
  readonly bFromNm: number;
  readonly bToNm: number;
}

/** Walking along side A's face, which is at the right hand, so the concrete is at the left. */
export function legsInPlan({ legs, turns, thicknessNm, closed }: Wall): readonly LegInPlan[] {
  const plans: LegInPlan[] = [];
  let at: Point = { x: 0, y: 0 };
  let along: Point = { x: 1, y: 0 };
  for (const [index, { lengthNm }] of legs.entries()) {
    const turn = (which: number): number => {
      const found = closed ? turns.at(which) : which < 0 ? undefined : turns[which];
      return found === undefined ? 0 : found === 'left' ? thicknessNm : -thicknessNm;
    };
    const across = left(along);
    const bFromNm = turn(index - 1);
    plans.push({ from: at, along, across, lengthNm, bFromNm, bToNm: lengthNm - turn(index) });
    at = { x: at.x + along.x * lengthNm, y: at.y + along.y * lengthNm };
    along = turns[index] === 'right' ? back(left(along)) : left(along);
  }
  return plans;
}

function left({ x, y }: Point): Point {
  return { x: 0 - y, y: x };
}

function back({ x, y }: Point): Point {
  return { x: 0 - x, y: 0 - y };
}

export interface HoleInPlan {
  readonly leg: number;
  readonly side: 'A' | 'B';
  readonly alongNm: number;
  readonly heightNm: number;
  /** On the site, and where the tie would come out on the other face. */
  readonly at: string;
  readonly opposite: string;
}

/** Every tie hole of the gangs, each place of a side once. */
export function holesInPlan(
  system: PanelSystem,
  wall: Wall,
  { gangs, designs, rowsNm }: WallProposal,
): readonly HoleInPlan[] {
  const plans = legsInPlan(wall);
  const panels = new Map<string, Panel>(system.panels.map((panel) => [panel.code, panel]));
  const found = new Map<string, HoleInPlan>();
  for (const gang of gangs) {
    const plan = plans[gang.leg]!;
    const { geometry } = designs.find(({ code }) => code === gang.design)!;
    for (const { panel: code, xNm, yNm, onSide } of geometry.panels) {
      const panel = panels.get(code)!;
      for (const [holeX, holeY] of panel.tieHolesNm ?? []) {
        const [x, y] = onSide ? [panel.heightNm - holeY, holeX] : [holeX, holeY];
        // Drawn from the back: side A's back is at the walker's right hand, side B's at the left.
        const drawn = xNm + x;
        const alongNm = gang.fromNm + (gang.side === 'A' ? drawn : gang.widthNm - drawn);
        const heightNm = gang.bottomNm + yNm + y;
        const faceNm = gang.side === 'A' ? 0 : wall.thicknessNm;
        const place = (acrossNm: number): string => {
          const { from, along, across } = plan;
          const px = from.x + along.x * alongNm + across.x * acrossNm;
          const py = from.y + along.y * alongNm + across.y * acrossNm;
          return `${px} ${py} ${heightNm}`;
        };
        const hole: HoleInPlan = {
          leg: gang.leg,
          side: gang.side,
          alongNm,
          heightNm,
          at: place(faceNm),
          opposite: place(wall.thicknessNm - faceNm),
        };
        found.set(`${gang.side} ${gang.leg} ${hole.at}`, hole);
      }
    }
  }
  for (const hole of cornerHoles(system, wall, plans, rowsNm))
    found.set(`${hole.side} ${hole.leg} ${hole.at}`, hole);
  return [...found.values()];
}

/** Inside corners stand with a leg along either face that meets there; their holes are measured from the corner. */
function cornerHoles(
  system: PanelSystem,
  wall: Wall,
  plans: readonly LegInPlan[],
  rowsNm: readonly number[],
): readonly HoleInPlan[] {
  const corners = system.components.filter(({ kind }) => kind === 'inside-corner');
  const rows = rowsNm.flatMap((row) => corners.filter(({ heightNm }) => heightNm === row));
  return wall.turns.flatMap((turn, index) => {
    const side = turn === 'left' ? ('B' as const) : ('A' as const);
    const [before, after] = [plans[index]!, plans[(index + 1) % plans.length]!];
    let bottomNm = 0;
    return rows.flatMap((piece) => {
      const at = bottomNm;
      bottomNm += piece.heightNm ?? 0;
      return (piece.tieHolesNm ?? []).flatMap(([x, y]) => {
        const end = side === 'A' ? before.lengthNm : before.bToNm;
        const start = side === 'A' ? 0 : after.bFromNm;
        const of = (plan: LegInPlan, leg: number, alongNm: number): HoleInPlan => {
          const faceNm = side === 'A' ? 0 : wall.thicknessNm;
          const place = (acrossNm: number): string =>
            `${plan.from.x + plan.along.x * alongNm + plan.across.x * acrossNm} ${
              plan.from.y + plan.along.y * alongNm + plan.across.y * acrossNm
            } ${at + y}`;
          return {
            leg,
            side,
            alongNm,
            heightNm: at + y,
            at: place(faceNm),
            opposite: place(wall.thicknessNm - faceNm),
          };
        };
        return [of(before, index, end - x), of(after, (index + 1) % plans.length, start + x)];
      });
    });
  });
}
