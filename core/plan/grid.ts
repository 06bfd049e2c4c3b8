// Held less stock of every dear component over time, cut at every instant at which a candidate plan can
// change it, with the greatest of every day. A change of plan is priced by the days it touches.
import { Breakpoints, breaksAtMost } from './breakpoints.ts';
import type { Edges } from './edges.ts';
import { gridPlaces, gridTimes, standingOnGrid } from './grid-times.ts';
import type { Followers } from './holding.ts';
import type { Model } from './model.ts';
import { partsOf, type Part } from './parts.ts';
import { dearComponents, dearPieces, sampleFrom } from './samples.ts';

/** What a plan costs: pieces short that cannot be hired come first. */
export interface SearchCost {
  readonly unmet: number;
  readonly cost: number;
}

export class Grid {
  readonly edges: Edges;
  private readonly components: Int32Array;
  private readonly rates: Float64Array;
  private readonly unhired: Uint8Array;
  private readonly times: Float64Array;
  private readonly dayFirst: Int32Array;
  private readonly dayAt: Int32Array;
  private readonly standing: Int32Array;
  private readonly excess: Int32Array;
  private readonly dayMost: Int32Array;
  private readonly most: Int32Array;
  /** Whether an edge may be used on this grid. */
  readonly allowed: Uint8Array;
  private readonly breaks: Breakpoints;

  /** `candidates` are the edges that plans on this grid may use. */
  constructor(model: Model, edges: Edges, candidates: Int32Array) {
    this.edges = edges;
    this.components = dearComponents(model, edges);
    const count = this.components.length;
    this.rates = Float64Array.from(this.components, (component) => edges.hire[component] ?? 0);
    this.unhired = Uint8Array.from(this.components, (component) => edges.cannotHire[component] ?? 0);
    const { times, starts } = gridTimes(model, edges, candidates, this.components);
    this.times = times;
    this.allowed = new Uint8Array(edges.to.length);
    for (const edge of candidates) this.allowed[edge] = 1;
    this.dayFirst = Int32Array.from(starts, (start) => sampleFrom(times, start));
    this.dayAt = new Int32Array(times.length + 1);
    for (let day = 0; day < starts.length; day += 1) this.dayAt.fill(day, this.dayFirst[day] ?? 0);
    this.dayMost = new Int32Array(count * starts.length);
    this.most = new Int32Array(count);
    const pieces = dearPieces(model, this.components);
    const places = gridPlaces(model, edges, candidates, times);
    this.standing = standingOnGrid(model, this.components, pieces, times, places);
    this.excess = Int32Array.from(this.standing);
    this.breaks = new Breakpoints(model, edges, pieces, count, places);
  }

  /** Clears the grid to what the turns hold while they stand, and answers what that alone costs. */
  layNothing(): SearchCost {
    this.excess.set(this.standing);
    return this.hireOfDays();
  }

  /** Lays a plan on the grid from nothing and answers what it costs. */
  lay(followers: Followers): SearchCost {
    this.layNothing();
    let labour = 0;
    for (const part of partsOf(this.edges, followers)) {
      this.breaks.collect([part]);
      this.flush(false);
      labour += this.labourOf(part);
    }
    const { unmet, cost } = this.hireOfDays();
    return { unmet, cost: cost + labour };
  }

  private hireOfDays(): SearchCost {
    let [unmet, cost] = [0, 0];
    const days = this.dayFirst.length;
    for (let index = 0; index < this.components.length; index += 1) {
      this.renewDays(index, 0, days - 1);
      for (let day = 0; day < days; day += 1) {
        const over = Math.max(0, this.dayMost[index * days + day] ?? 0);
        if (this.unhired[index] === 1) unmet += over;
        else cost += over * (this.rates[index] ?? 0);
      }
    }
    return { unmet, cost };
  }

  /** By how much the cost changes with the parts; the grid stays as it is. At most eight parts. */
  change(parts: readonly Part[]): SearchCost {
    this.breaks.collect(parts);
    let [unmet, cost] = [0, 0];
    for (const part of parts) cost += part.sign * this.labourOf(part);
    for (const index of this.breaks.touched) {
      if ((this.most[index] ?? 0) + (this.breaks.rise[index] ?? 0) > 0) {
        const days = this.excessChange(index);
        if (this.unhired[index] === 1) unmet += days;
        else cost += days * (this.rates[index] ?? 0);
      }
    }
    return { unmet, cost };
  }

  /** Puts the parts on the grid. */
  apply(parts: readonly Part[]): void {
    this.breaks.collect(parts);
    this.flush(true);
  }

  private labourOf({ kind, which }: Part): number {
    if (kind === 'begin') return this.edges.assembleLabour[which] ?? 0;
    if (kind === 'end') return this.edges.breakDownLabour[which] ?? 0;
    return this.edges.labour[which] ?? 0;
  }

  /** The change of a component's sum of daily excesses under the breakpoints collected. */
  private excessChange(index: number): number {
    const { dayFirst, dayAt, dayMost, excess, times } = this;
    const { at: breakAt, by: breakBy } = this.breaks;
    const base = index * breaksAtMost;
    const end = base + (this.breaks.count[index] ?? 0);
    const row = index * times.length;
    const dayRow = index * dayFirst.length;
    let sum = 0;
    let by = 0;
    let next = base;
    let day = dayAt[breakAt[base] ?? 0] ?? 0;
    while (next < end) {
      const dayEnd = dayFirst[day + 1] ?? times.length;
      const old = dayMost[dayRow + day] ?? 0;
      if ((breakAt[next] ?? 0) >= dayEnd) {
        if (by === 0) {
          day = dayAt[breakAt[next] ?? 0] ?? 0;
          if ((breakAt[next] ?? 0) >= times.length) break;
          continue;
        }
        sum += (old + by > 0 ? old + by : 0) - (old > 0 ? old : 0);
      } else {
        let cell = dayFirst[day] ?? 0;
        let most = -2_147_483_648;
        while (cell < dayEnd) {
          while (next < end && (breakAt[next] ?? 0) <= cell) {
            by += breakBy[next] ?? 0;
            next += 1;
          }
          const stop = next < end && (breakAt[next] ?? 0) < dayEnd ? (breakAt[next] ?? 0) : dayEnd;
          for (; cell < stop; cell += 1) {
            const over = (excess[row + cell] ?? 0) + by;
            if (over > most) most = over;
          }
        }
        sum += (most > 0 ? most : 0) - (old > 0 ? old : 0);
      }
      day += 1;
    }
    return sum;
  }

  /** Adds the breakpoints collected to the grid, and renews the days they touch unless all are renewed later. */
  private flush(renew: boolean): void {
    const { touched, count, at: breakAt, by: breakBy } = this.breaks;
    for (const index of touched) {
      const base = index * breaksAtMost;
      const end = base + (count[index] ?? 0);
      const row = index * this.times.length;
      let by = 0;
      for (let next = base; next + 1 < end; next += 1) {
        by += breakBy[next] ?? 0;
        if (by === 0) continue;
        const stop = row + (breakAt[next + 1] ?? 0);
        for (let cell = row + (breakAt[next] ?? 0); cell < stop; cell += 1)
          this.excess[cell] = (this.excess[cell] ?? 0) + by;
      }
      if (!renew) continue;
      const first = this.dayAt[breakAt[base] ?? 0] ?? 0;
      this.renewDays(index, first, this.dayAt[breakAt[end - 1] ?? 0] ?? first);
    }
  }

  private renewDays(index: number, first: number, last: number): void {
    const { dayFirst, times, excess, dayMost } = this;
    const row = index * times.length;
    for (let day = first; day <= last && day < dayFirst.length; day += 1) {
      const end = dayFirst[day + 1] ?? times.length;
      let most = -2_147_483_648;
      for (let cell = dayFirst[day] ?? 0; cell < end; cell += 1)
        most = Math.max(most, excess[row + cell] ?? 0);
      dayMost[index * dayFirst.length + day] = most;
    }
    let most = -2_147_483_648;
    const dayRow = index * dayFirst.length;
    for (let day = 0; day < dayFirst.length; day += 1) most = Math.max(most, dayMost[dayRow + day] ?? 0);
    this.most[index] = most;
  }
}
