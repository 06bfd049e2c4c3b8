// Where the corners of a wall lie in its plan: side A's face as walked, with the concrete at the left, and side B's face
// beside it. Y grows upwards; whoever draws turns it.
export interface PlanPoint {
  readonly xNm: number;
  readonly yNm: number;
}

export interface PlanFaces {
  readonly a: readonly PlanPoint[];
  readonly b: readonly PlanPoint[];
}

interface Heading {
  readonly x: number;
  readonly y: number;
}

export function planFaces(
  lengthsNm: readonly number[],
  turns: readonly ('left' | 'right')[],
  thicknessNm: number,
): PlanFaces {
  let at: PlanPoint = { xNm: 0, yNm: 0 };
  let heading: Heading = { x: 1, y: 0 };
  const a: PlanPoint[] = [at];
  const b: PlanPoint[] = [beside(at, leftOf(heading), thicknessNm)];
  for (const [index, lengthNm] of lengthsNm.entries()) {
    at = beside(at, heading, lengthNm);
    const next = turned(heading, turns[index]);
    a.push(at);
    const last = index === lengthsNm.length - 1;
    const own = beside(at, leftOf(heading), thicknessNm);
    // At a square corner side B's corner lies off by the thickness both ways.
    b.push(last ? own : beside(own, leftOf(next), thicknessNm));
    heading = next;
  }
  return { a, b };
}

function leftOf({ x, y }: Heading): Heading {
  return { x: 0 - y, y: x };
}

function turned(heading: Heading, turn: 'left' | 'right' | undefined): Heading {
  if (turn === undefined) return heading;
  const left = leftOf(heading);
  return turn === 'left' ? left : { x: 0 - left.x, y: 0 - left.y };
}

function beside({ xNm, yNm }: PlanPoint, { x, y }: Heading, distanceNm: number): PlanPoint {
  return { xNm: xNm + x * distanceNm, yNm: yNm + y * distanceNm };
}
