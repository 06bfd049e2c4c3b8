// A queue that gives out the first of its things by an order of their own: a binary heap.

export interface Queue<Thing> {
  readonly put: (thing: Thing) => void;
  readonly take: () => Thing | undefined;
}

/** @param before is the first of the two to be taken before the second? */
export function queueBy<Thing>(before: (one: Thing, other: Thing) => boolean): Queue<Thing> {
  const heap: Thing[] = [];
  return {
    put(thing) {
      let place = heap.length;
      while (place > 0) {
        const above = (place - 1) >> 1;
        const parent = heap[above];
        if (parent === undefined || !before(thing, parent)) break;
        heap[place] = parent;
        place = above;
      }
      heap[place] = thing;
    },
    take() {
      const first = heap[0];
      const last = heap.pop();
      if (last === undefined || heap.length === 0) return first;
      let place = 0;
      for (;;) {
        let below = 2 * place + 1;
        let child = heap[below];
        if (child === undefined) break;
        const right = heap[below + 1];
        if (right !== undefined && before(right, child)) {
          child = right;
          below += 1;
        }
        if (!before(child, last)) break;
        heap[place] = child;
        place = below;
      }
      heap[place] = last;
      return first;
    },
  };
}
