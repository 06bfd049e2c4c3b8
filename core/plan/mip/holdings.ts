// When every part of a plan holds which pieces, by places on a list of instants: what the rows of the model are made of.
import type { Edges } from '../edges.ts';
import { gridPlaces, gridTimes, standingOnGrid, type GridPlaces } from '../grid-times.ts';
import type { Model } from '../model.ts';
import type { Part } from '../parts.ts';
import { dearComponents, dearPieces, sampleFrom } from '../samples.ts';
import type { Kept } from './kept.ts';

/** Pieces of a component, by its place among the dear ones, from an instant up to but not including another. */
export type Hold = (index: number, quantity: number, from: number, to: number) => void;

export class Holdings {
  readonly components: Int32Array;
  readonly times: Float64Array;
  /** The first instant of each day of hire. */
  readonly dayFirst: Int32Array;
  /** What stands less stock: every component over all instants, one after another. */
  readonly standing: Int32Array;
  private readonly model: Model;
  private readonly edges: Edges;
  private readonly pieces: Int32Array;
  private readonly places: GridPlaces;

  constructor(model: Model, edges: Edges, kept: Kept) {
    this.model = model;
    this.edges = edges;
    this.components = dearComponents(model, edges);
    this.pieces = dearPieces(model, this.components);
    const { times, starts } = gridTimes(model, edges, kept.edges, this.components);
    this.times = times;
    this.places = gridPlaces(model, edges, kept.edges, times);
    this.dayFirst = Int32Array.from(starts, (start) => sampleFrom(times, start));
    this.standing = standingOnGrid(model, this.components, this.pieces, times, this.places);
  }

  /** What the part holds besides its turns while they stand. */
  of({ kind, which }: Pick<Part, 'kind' | 'which'>, hold: Hold): void {
    const { places } = this;
    if (kind === 'begin') this.whole(which, places.assembly[which] ?? 0, places.set[which] ?? 0, hold);
    else if (kind === 'end') this.whole(which, places.strip[which] ?? 0, places.brokenDown[which] ?? 0, hold);
    else this.between(which, hold);
  }

  private whole(turn: number, from: number, to: number, hold: Hold): void {
    const count = this.components.length;
    const own = (this.model.design[turn] ?? 0) * count;
    for (let index = 0; index < count; index += 1) {
      const quantity = this.pieces[own + index] ?? 0;
      if (quantity > 0 && from < to) hold(index, quantity, from, to);
    }
  }

  private between(edge: number, hold: Hold): void {
    const count = this.components.length;
    const [earlier, later] = [this.edges.earlier[edge] ?? 0, this.edges.to[edge] ?? 0];
    const [left, right] = [
      (this.model.design[earlier] ?? 0) * count,
      (this.model.design[later] ?? 0) * count,
    ];
    const { places } = this;
    const [strip, set] = [places.strip[earlier] ?? 0, places.set[later] ?? 0];
    const put = (index: number, quantity: number, from: number, to: number): void => {
      if (quantity > 0 && from < to) hold(index, quantity, from, to);
    };
    for (let index = 0; index < count; index += 1) {
      const [before, after] = [this.pieces[left + index] ?? 0, this.pieces[right + index] ?? 0];
      put(index, Math.min(before, after), strip, set);
      put(index, after - before, places.built[edge] ?? 0, set);
      put(index, before - after, strip, places.takenOut[edge] ?? 0);
    }
  }
}
