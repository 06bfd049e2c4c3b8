// Where everything of a load is drawn: from the left side, and from above; lengths from the cab. Stacks that stand
// side by side would hide one another from the side, so each of them is seen in a row of its own. The screen and the
// loading list draw the same places.
import { mm } from './paper.ts';

export interface DrawnLayer {
  readonly what:
    | { readonly component: string; readonly quantity: number }
    | { readonly container: string }
    | { readonly gang: string };
  readonly weightGrams: number;
  readonly lengthNm: number;
  readonly widthNm: number;
  readonly heightNm: number;
  readonly stop: number;
}

export interface DrawnStack {
  readonly fromCabNm: number;
  readonly fromLeftNm: number;
  readonly layers: readonly DrawnLayer[];
}

export interface LoadBox {
  readonly key: string;
  readonly xNm: number;
  /** From the deck upwards, or from the left side of the deck. */
  readonly yNm: number;
  readonly lengthNm: number;
  readonly acrossNm: number;
  readonly stop: number;
  /** From 1. */
  readonly stack: number;
  readonly words: string;
}

export interface LoadPlaces {
  /** Seen from the side, the stacks at the left of the deck first. */
  readonly sides: readonly (readonly LoadBox[])[];
  readonly above: readonly LoadBox[];
}

export function loadPlaces(stacks: readonly DrawnStack[]): LoadPlaces {
  const sides: LoadBox[][] = [];
  const above: LoadBox[] = [];
  for (const [index, stack] of stacks.entries()) {
    const lane = laneOf(stack, stacks);
    let yNm = 0;
    for (const [level, layer] of stack.layers.entries()) {
      const box = {
        key: `${index} ${level}`,
        xNm: stack.fromCabNm,
        lengthNm: layer.lengthNm,
        stop: layer.stop,
        stack: index + 1,
        words: layerWords(layer),
      };
      (sides[lane] ??= []).push({ ...box, yNm, acrossNm: layer.heightNm });
      if (level === 0) above.push({ ...box, yNm: stack.fromLeftNm, acrossNm: layer.widthNm });
      yNm += layer.heightNm;
    }
  }
  return { sides: Array.from(sides, (boxes) => boxes ?? []), above };
}

/** How many stacks stand to the left of it in the same row across the deck. */
function laneOf(stack: DrawnStack, stacks: readonly DrawnStack[]): number {
  return stacks.filter((other) => other.fromCabNm === stack.fromCabNm && other.fromLeftNm < stack.fromLeftNm)
    .length;
}

/** "10 P836", "RK-1", "GA-2". */
export function layerWords({ what }: Pick<DrawnLayer, 'what'>): string {
  if ('component' in what) return `${what.quantity} ${what.component}`;
  return 'container' in what ? what.container : what.gang;
}

/** Stops are told apart by their numbers, and by how their boxes are ruled: not at all, upright, level, both. */
export function ruling(stop: number): { readonly upright: boolean; readonly level: boolean } {
  const kind = (stop - 1) % 4;
  return { upright: kind === 1 || kind === 3, level: kind === 2 || kind === 3 };
}

/** Lines over a box, as a path: `every` apart, in the measure of the box. */
export function rulingPath(
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  stop: number,
  every: number,
): string {
  const { upright, level } = ruling(stop);
  let path = '';
  if (upright)
    for (let x = box.x + every; x < box.x + box.width; x += every)
      path += `M${mm(x)} ${mm(box.y)}v${mm(box.height)}`;
  if (level)
    for (let y = box.y + every; y < box.y + box.height; y += every)
      path += `M${mm(box.x)} ${mm(y)}h${mm(box.width)}`;
  return path;
}
