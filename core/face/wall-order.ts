// In which order the parts of a leg stand. Between two places where both sides are level and no hole waits, a part
// stands for itself and can stand anywhere in the leg; so they are put as in a mirror at the middle, wide ones outside
// and a filler in the middle: gangs come out alike, and what is built once serves twice.
import type { PieceClass } from './wall-pieces.ts';
import type { StateStep, Walk } from './wall-walk.ts';
import type { SideName } from './wall.ts';

export type Unit =
  | { readonly kind: 'piece'; readonly class: number }
  | { readonly kind: 'filler'; readonly widthNm: number };

/** What stands on each side, from the leg's start. */
export type Sequence = Readonly<Record<SideName, readonly Unit[]>>;

export function orderWay(
  way: readonly StateStep[],
  isLevel: Walk['isLevel'],
  classes: readonly PieceClass[],
): Sequence {
  const level = way.flatMap(({ from }, index) => (isLevel[from] === true ? [index] : []));
  const [first, last] = [level[0], level.at(-1)];
  if (first === undefined || last === undefined) return sequenceOf(way);
  const parts = level.slice(1).map((end, index) => sequenceOf(way.slice(level[index], end)));
  return joined([sequenceOf(way.slice(0, first)), ...mirrored(parts, classes), sequenceOf(way.slice(last))]);
}

function mirrored(parts: readonly Sequence[], classes: readonly PieceClass[]): readonly Sequence[] {
  const kinds = new Map<string, { part: Sequence; count: number }>();
  for (const part of parts) {
    const turned = turnedRound(part, classes);
    const texts = [part, ...(turned === undefined ? [] : [turned])].map((each) => JSON.stringify(each));
    const key = texts.reduce((one, other) => (one < other ? one : other));
    const kind = kinds.get(key);
    if (kind === undefined) kinds.set(key, { part, count: 1 });
    else kind.count += 1;
  }
  const sorted = [...kinds.values()].sort(
    (one, other) => widthOf(other.part, classes) - widthOf(one.part, classes),
  );
  const [left, middle]: [Sequence[], Sequence[]] = [[], []];
  for (const { part, count } of sorted) {
    for (let times = 0; times < Math.floor(count / 2); times += 1) left.push(part);
    if (count % 2 === 1) middle.push(part);
  }
  const right = left.map((part) => turnedRound(part, classes) ?? part).reverse();
  const fillers = middle.filter(hasFiller);
  const plain = middle.filter((part) => !hasFiller(part));
  const half = Math.ceil(plain.length / 2);
  return [...left, ...plain.slice(0, half), ...fillers, ...plain.slice(half), ...right];
}

/** The part as in a mirror, where its pieces are their own mirror images. */
function turnedRound(part: Sequence, classes: readonly PieceClass[]): Sequence | undefined {
  const isEven = [...part.A, ...part.B].every(
    (unit) => unit.kind === 'filler' || isMirrored(classes[unit.class]),
  );
  return isEven ? { A: part.A.toReversed(), B: part.B.toReversed() } : undefined;
}

function isMirrored(found: PieceClass | undefined): boolean {
  if (found === undefined) return false;
  const { widthNm, holes } = found;
  return (['A', 'B'] as const).every((side) => {
    const places = new Set(holes[side].map(({ alongNm, level }) => `${alongNm} ${level}`));
    return holes[side].every(({ alongNm, level }) => places.has(`${widthNm - alongNm} ${level}`));
  });
}

function hasFiller({ A, B }: Sequence): boolean {
  return [...A, ...B].some(({ kind }) => kind === 'filler');
}

function widthOf({ A }: Sequence, classes: readonly PieceClass[]): number {
  return A.reduce((sum, unit) => sum + unitWidthNm(unit, classes), 0);
}

export function unitWidthNm(unit: Unit, classes: readonly PieceClass[]): number {
  return unit.kind === 'filler' ? unit.widthNm : (classes[unit.class]?.widthNm ?? 0);
}

function sequenceOf(way: readonly StateStep[]): Sequence {
  const units: Record<SideName, Unit[]> = { A: [], B: [] };
  for (const { step } of way) {
    switch (step.kind) {
      case 'piece':
        units[step.side].push({ kind: 'piece', class: step.class });
        break;
      case 'both':
        for (const side of ['A', 'B'] as const) units[side].push({ kind: 'piece', class: step.class });
        break;
      case 'filler':
        for (const side of ['A', 'B'] as const) {
          const widthNm = step.widthsNm[side];
          if (widthNm !== undefined) units[side].push({ kind: 'filler', widthNm });
        }
        break;
      case 'finish':
        break;
    }
  }
  return units;
}

function joined(parts: readonly Sequence[]): Sequence {
  return { A: parts.flatMap(({ A }) => A), B: parts.flatMap(({ B }) => B) };
}
