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

/** Of a closed wall the last turn leads from the last leg into the first. */
export function planFaces(
  lengthsNm: readonly number[],
  turns: readonly ('left' | 'right')[],
  thicknessNm: number,
  closed = false,
): PlanFaces {
  let at: PlanPoint = { xNm: 0, yNm: 0 };
  let heading: Heading = { x: 1, y: 0 };
  const last = lengthsNm.length - 1;
  const shut = closed && turns[last] !== undefined;
  const a: PlanPoint[] = [at];
  const b: PlanPoint[] = [];
  const start = beside(at, leftOf(heading), thicknessNm);
  b.push(shut ? beside(start, turns[last] === 'left' ? heading : back(heading), thicknessNm) : start);
  for (const [index, lengthNm] of lengthsNm.entries()) {
    at = beside(at, heading, lengthNm);
    a.push(at);
    const own = beside(at, leftOf(heading), thicknessNm);
    const turn = index === last && !shut ? undefined : turns[index];
    heading = turned(heading, turn);
    // At a square corner side B's corner lies off by the thickness both ways.
    b.push(turn === undefined ? own : beside(own, leftOf(heading), thicknessNm));
  }
  return { a, b };
}

function leftOf({ x, y }: Heading): Heading {
  return { x: 0 - y, y: x };
}

function back({ x, y }: Heading): Heading {
  return { x: 0 - x, y: 0 - y };
}

function turned(heading: Heading, turn: 'left' | 'right' | undefined): Heading {
  if (turn === undefined) return heading;
  return turn === 'left' ? leftOf(heading) : back(leftOf(heading));
}

function beside({ xNm, yNm }: PlanPoint, { x, y }: Heading, distanceNm: number): PlanPoint {
  return { xNm: xNm + x * distanceNm, yNm: yNm + y * distanceNm };
}
