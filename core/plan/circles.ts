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
