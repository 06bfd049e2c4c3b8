// Where a change of plan changes what is held: for every component touched, the places on the grid in order
// of time and by how many pieces. One set of lists is used again and again, as changes are tried by thousands.
import type { Edges } from './edges.ts';
import type { GridPlaces } from './grid-times.ts';
import type { Model } from './model.ts';
import type { Part } from './parts.ts';

/** Breakpoints of a component in one change: eight parts of three stretches with two ends each, and some room. */
export const breaksAtMost = 64;

const none = new Int32Array(0);

export class Breakpoints {
  /** Components that the parts collected last change. */
  touched: number[] = [];
  /** Number of breakpoints of every component; its own begin at `breaksAtMost` times its place. */
  readonly count: Int32Array;
  readonly at: Int32Array;
  readonly by: Int32Array;
  /** No more than this is added to what is held of a component touched, at any time. */
  readonly rise: Int32Array;
  private readonly model: Model;
  private readonly edges: Edges;
  private readonly components: number;
  private readonly pieces: Int32Array;
  private readonly places: GridPlaces;
  /** Of every design, the components it has. */
  private readonly has: readonly Int32Array[];

  constructor(model: Model, edges: Edges, pieces: Int32Array, components: number, places: GridPlaces) {
    this.model = model;
    this.edges = edges;
    this.components = components;
    this.pieces = pieces;
    this.places = places;
    this.count = new Int32Array(components);
    this.rise = new Int32Array(components);
    this.at = new Int32Array(components * breaksAtMost);
    this.by = new Int32Array(components * breaksAtMost);
    const all = Int32Array.from({ length: components }, (_, index) => index);
    this.has = model.designCodes.map((_, design) =>
      all.filter((index) => (pieces[design * components + index] ?? 0) > 0),
    );
  }

  /** Writes the breakpoints of the parts, component by component. */
  collect(parts: readonly Part[]): void {
    for (const index of this.touched) this.count[index] = 0;
    this.touched = [];
    const { model, places } = this;
    for (const { kind, which, sign } of parts) {
      if (kind === 'follow') this.collectFollow(which, sign);
      else {
        const own = (model.design[which] ?? 0) * this.components;
        const from = (kind === 'begin' ? places.assembly : places.strip)[which] ?? 0;
        const to = (kind === 'begin' ? places.set : places.brokenDown)[which] ?? 0;
        for (const index of this.has[model.design[which] ?? 0] ?? none) {
          this.mark(index, sign * (this.pieces[own + index] ?? 0), from, to);
        }
      }
    }
  }

  private collectFollow(edge: number, sign: number): void {
    const { model, edges, places } = this;
    const earlier = edges.earlier[edge] ?? 0;
    const later = edges.to[edge] ?? 0;
    const count = this.components;
    const left = (model.design[earlier] ?? 0) * count;
    const right = (model.design[later] ?? 0) * count;
    const strip = places.strip[earlier] ?? 0;
    const set = places.set[later] ?? 0;
    const built = places.built[edge] ?? 0;
    const out = places.takenOut[edge] ?? 0;
    for (const index of this.has[model.design[earlier] ?? 0] ?? none) {
      const before = this.pieces[left + index] ?? 0;
      const after = this.pieces[right + index] ?? 0;
      const common = before < after ? before : after;
      this.mark(index, sign * common, strip, set);
      this.mark(index, sign * (after - common), built, set);
      this.mark(index, sign * (before - common), strip, out);
    }
    if (left === right) return;
    for (const index of this.has[model.design[later] ?? 0] ?? none) {
      if (this.pieces[left + index] === 0)
        this.mark(index, sign * (this.pieces[right + index] ?? 0), built, set);
    }
  }

  private mark(index: number, quantity: number, from: number, to: number): void {
    if (quantity === 0 || from >= to) return;
    const used = this.count[index] ?? 0;
    if (used === 0) {
      this.touched.push(index);
      this.rise[index] = 0;
    }
    if (quantity > 0) this.rise[index] = (this.rise[index] ?? 0) + quantity;
    const base = index * breaksAtMost;
    this.insert(base, used, from, quantity);
    this.insert(base, used + 1, to, -quantity);
    this.count[index] = used + 2;
  }

  /** Keeps the breakpoints of a component in order of time. */
  private insert(base: number, used: number, at: number, by: number): void {
    let place = base + used;
    while (place > base && (this.at[place - 1] ?? 0) > at) {
      this.at[place] = this.at[place - 1] ?? 0;
      this.by[place] = this.by[place - 1] ?? 0;
      place -= 1;
    }
    this.at[place] = at;
    this.by[place] = by;
  }
}
