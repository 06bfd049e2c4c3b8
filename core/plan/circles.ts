// Sequences that come back to where they began. One walk over all pours, so that a file of many thousand is
// looked through at once; the walk keeps its own stack, since a chain may be as long as the file.

/**
 * The circles that a walk along the predecessors meets, each as its codes in order. Every group of pours
 * that cannot be put in an order has at least one of its circles here.
 * @param before each code with the codes that come before it; codes without an entry end a path
 */
export function circlesIn(before: ReadonlyMap<string, readonly string[]>): string[][] {
  const circles: string[][] = [];
  const finished = new Set<string>();
  for (const start of before.keys()) {
    const path: { readonly code: string; next: number }[] = [];
    const placeOnPath = new Map<string, number>();
    const enter = (code: string): void => {
      placeOnPath.set(code, path.length);
      path.push({ code, next: 0 });
    };
    if (!finished.has(start)) enter(start);
    for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
      const code = before.get(top.code)?.[top.next];
      top.next += 1;
      if (code === undefined) {
        finished.add(top.code);
        placeOnPath.delete(top.code);
        path.pop();
        continue;
      }
      const place = placeOnPath.get(code);
      if (place !== undefined) circles.push(path.slice(place).map((step) => step.code));
      else if (!finished.has(code)) enter(code);
    }
  }
  return circles;
}

/**
 * The shortest circle among the codes of a circle: no entry of it can be left out. Of several as short, the one that is
 * found first from the front of the circle.
 */
export function shortestCircle(
  circle: readonly string[],
  before: ReadonlyMap<string, readonly string[]>,
): string[] {
  const inside = new Set(circle);
  let shortest: readonly string[] = circle;
  for (const start of circle) {
    const cameFrom = new Map<string, string | null>([[start, null]]);
    const found = wayBack(start, inside, before, cameFrom);
    if (found !== undefined && found.length < shortest.length) shortest = found;
  }
  return [...shortest];
}

/** Breadth first, so that the first way back to the start is a shortest one. */
function wayBack(
  start: string,
  inside: ReadonlySet<string>,
  before: ReadonlyMap<string, readonly string[]>,
  cameFrom: Map<string, string | null>,
): string[] | undefined {
  const queue = [start];
  for (let code = queue.shift(); code !== undefined; code = queue.shift()) {
    for (const next of before.get(code) ?? []) {
      if (next === start) {
        const way: string[] = [];
        for (let at: string | null = code; at !== null; at = cameFrom.get(at) ?? null) way.unshift(at);
        return way;
      }
      if (!inside.has(next) || cameFrom.has(next)) continue;
      cameFrom.set(next, code);
      queue.push(next);
    }
  }
  return undefined;
}
