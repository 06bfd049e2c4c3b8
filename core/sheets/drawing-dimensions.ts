// Dimension lines around a drawing: chains with ticks, numbers on the line where they fit and stepped under it
// where they would touch, and the whole length and height outside of them.
import { type DimensionChains, type Stretch } from './dimension-chains.ts';
import { text, wordsMm } from './drawing-labels.ts';
import type { Place } from './drawing-place.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { el, type SheetNode } from './node.ts';
import { mm } from './paper.ts';

/** Height of the numbers. */
const textMm = 2.6;
/** From the gang to its chain, and from the chain to the whole length. */
export const chainMm = 6;
export const wholeMm = 14;

export function dimensions(
  chains: DimensionChains,
  place: Place,
  units: SheetUnits,
  size: { readonly widthNm: number; readonly heightNm: number },
): readonly SheetNode[] {
  const [top, bottom] = [place.y(size.heightNm), place.y(0)];
  const [left, right] = [place.x(0), place.x(size.widthNm)];
  const level = { at: (nm: number) => place.x(nm), units, upright: false };
  const upright = { at: (nm: number) => place.y(nm), units, upright: true };
  return [
    ...chain({ ...level, stretches: chains.bottom, line: bottom + chainMm, out: 1 }),
    ...chain({ ...level, stretches: chains.top, line: top - chainMm, out: -1 }),
    ...chain({ ...upright, stretches: chains.left, line: left - chainMm, out: -1 }),
    ...chain({ ...upright, stretches: chains.right, line: right + chainMm, out: 1 }),
    ...(chains.bottom.length > 1
      ? chain({ ...level, stretches: [chains.width], line: bottom + wholeMm, out: 1 })
      : []),
    ...(chains.left.length > 1
      ? chain({ ...upright, stretches: [chains.height], line: left - wholeMm, out: -1 })
      : []),
  ];
}

/** One chain along a level line at `line` millimetres down the paper. */
export function levelChain(
  stretches: readonly Stretch[],
  place: Place,
  line: number,
  units: SheetUnits,
): readonly SheetNode[] {
  return chain({ stretches, at: (nm) => place.x(nm), line, out: 1, upright: false, units });
}

interface Chain {
  readonly stretches: readonly Stretch[];
  readonly at: (nm: number) => number;
  /** Where the line runs: its y, or its x where it is upright. */
  readonly line: number;
  /** Away from the gang: down or right is 1. */
  readonly out: 1 | -1;
  readonly upright: boolean;
  readonly units: SheetUnits;
}

function chain({ stretches, at, line, out, upright, units }: Chain): readonly SheetNode[] {
  let steps = 0;
  return inGroups(stretches, units, at).flatMap(({ cuts, words }) => {
    const [from = 0, ...rest] = cuts.map(at);
    const to = rest.at(-1) ?? from;
    const fits = Math.abs(to - from) > wordsMm(words, textMm) + 1;
    steps = fits ? 0 : steps + 1;
    // A number that does not fit steps out, the next one further, so that neighbours never touch.
    const off = fits ? -1.8 : 2 + ((steps - 1) % 2) * 2.9;
    const middle = (from + to) / 2;
    const across = fits ? line + off : line + out * off;
    return [
      stroke(upright, line, from, to, 'dim'),
      ...cuts.map((cut) => tick(upright, line, at(cut))),
      upright ? text(across, middle, 'dim-words', words, true) : text(middle, across, 'dim-words', words),
    ];
  });
}

interface Group {
  /** Where its ticks are. */
  readonly cuts: readonly number[];
  readonly words: string;
}

/** Each stretch with its number; a row of equal ones too short for it as "40 × 12"", once. */
function inGroups(
  stretches: readonly Stretch[],
  units: SheetUnits,
  at: (nm: number) => number,
): readonly Group[] {
  const groups: { cuts: number[]; number: string; small: boolean }[] = [];
  for (const { fromNm, toNm } of stretches) {
    const number = units.dimension(toNm - fromNm);
    const small = Math.abs(at(toNm) - at(fromNm)) <= wordsMm(number, textMm) + 1;
    const last = groups.at(-1);
    if (small && last?.small === true && last.number === number && last.cuts.at(-1) === fromNm)
      last.cuts.push(toNm);
    else groups.push({ cuts: [fromNm, toNm], number, small });
  }
  return groups.map(({ cuts, number }) => ({
    cuts,
    words: cuts.length > 2 ? `${cuts.length - 1} × ${number}` : number,
  }));
}

function stroke(upright: boolean, line: number, from: number, to: number, className: string): SheetNode {
  const [a, b, c] = [mm(line), mm(from), mm(to)];
  return upright
    ? el('line', { class: className, x1: a, x2: a, y1: b, y2: c })
    : el('line', { class: className, x1: b, x2: c, y1: a, y2: a });
}

function tick(upright: boolean, line: number, at: number): SheetNode {
  const [x, y] = upright ? [line, at] : [at, line];
  return el('path', { class: 'dim-tick', d: `M${mm(x - 1)} ${mm(y + 1)}L${mm(x + 1)} ${mm(y - 1)}` });
}
