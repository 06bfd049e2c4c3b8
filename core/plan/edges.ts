// All follows that a plan may use, with what each costs and when it holds pieces, laid out in flat lists
// for the search. An edge leads from a turn to one that may follow it.
// Told instructions: the labour of edges, beginnings and ends has in it what changing them costs, so that a plan's labour is
// that of its parts and nothing else need be known of what was told.
// Fixed choices: follows that they forbid are no edges. A fixed follow is the only edge out of its earlier and into its
// later turn, and `fixed`: every plan uses it, so that its earlier turn never ends a run and its later one begins none. A fixed
// assembly has no edges into its turn, a fixed break-down none out of it.
import { ChangeCounts, isFixedFollow, isLeftOpen } from './edge-choices.ts';
import { assemblyFrom, brokenDownAt } from './holding.ts';
import type { Model } from './model.ts';

/** Money of the search is in plain numbers: grains where all sums stay whole, else minor units. */
interface SearchMoney {
  /** Whether equal amounts are exactly equal. */
  readonly exact: boolean;
  readonly perGrain: number;
  /** Two amounts closer than this are the same. */
  readonly tolerance: number;
}

export interface Edges {
  readonly turns: number;
  readonly money: SearchMoney;
  /** Edges of turn i are `start[i]` up to but not including `start[i + 1]`, by the input order of `to`. */
  readonly start: Int32Array;
  readonly to: Int32Array;
  /** The turn an edge leads from. */
  readonly earlier: Int32Array;
  /** 1: every plan uses the edge. */
  readonly fixed: Uint8Array;
  readonly labour: Float64Array;
  readonly builtFrom: Float64Array;
  readonly takenOutAt: Float64Array;
  /** Of every turn: labour and times of beginning a run with it, and of ending one. */
  readonly assembleLabour: Float64Array;
  readonly assemblyFrom: Float64Array;
  readonly breakDownLabour: Float64Array;
  readonly brokenDownAt: Float64Array;
  /** Hire of a piece a day; 0 where it cannot be hired. */
  readonly hire: Float64Array;
  readonly cannotHire: Uint8Array;
}

export function edgesOf(model: Model): Edges {
  const turns = model.turnIds.length;
  const money = searchMoney(model);
  const cost = (grains: bigint): number => Number(grains) * money.perGrain;
  const pairs = new FollowTimes(model, money);
  const changes = new ChangeCounts(model);
  const perChange = cost(model.changeGrains);
  const start = new Int32Array(turns + 1);
  const most = Math.max(1, (turns * (turns - 1)) / 2);
  const to = new Int32Array(most);
  const leads = new Int32Array(most);
  const fixed = new Uint8Array(most);
  const labour = new Float64Array(most);
  const builtFrom = new Float64Array(most);
  const takenOutAt = new Float64Array(most);
  let count = 0;
  for (let earlier = 0; earlier < turns; earlier += 1) {
    const flownAt = (model.to[earlier] ?? 0) + model.flyOnUnits;
    for (let later = 0; later < turns; later += 1) {
      if ((model.from[later] ?? 0) < flownAt || !pairs.fits(earlier, later)) continue;
      if (!isLeftOpen(model, earlier, later)) continue;
      to[count] = later;
      leads[count] = earlier;
      fixed[count] = isFixedFollow(model, earlier, later) ? 1 : 0;
      labour[count] =
        pairs.labour(model.design[earlier] ?? 0, model.design[later] ?? 0) +
        perChange * changes.follow(earlier, later);
      builtFrom[count] = pairs.builtFrom(model.design[earlier] ?? 0, later);
      takenOutAt[count] = pairs.takenOutAt(earlier, model.design[later] ?? 0);
      count += 1;
    }
    start[earlier + 1] = count;
  }
  const all = Array.from({ length: turns }, (_, turn) => turn);
  return {
    turns,
    money,
    start,
    to: to.slice(0, count),
    earlier: leads.slice(0, count),
    fixed: fixed.slice(0, count),
    labour: labour.slice(0, count),
    builtFrom: builtFrom.slice(0, count),
    takenOutAt: takenOutAt.slice(0, count),
    assembleLabour: Float64Array.from(
      all,
      (turn) =>
        (model.built[turn] === true ? 0 : cost(model.assembleGrains[model.design[turn] ?? 0] ?? 0n)) +
        perChange * changes.begin(turn),
    ),
    assemblyFrom: Float64Array.from(all, (turn) => assemblyFrom(model, turn)),
    breakDownLabour: Float64Array.from(all, (turn) =>
      cost(model.breakDownGrains[model.design[turn] ?? 0] ?? 0n),
    ),
    brokenDownAt: Float64Array.from(all, (turn) => brokenDownAt(model, turn)),
    hire: Float64Array.from(model.hire, (grains) => cost(grains ?? 0n)),
    cannotHire: Uint8Array.from(model.hire, (grains) => (grains === null ? 1 : 0)),
  };
}

/** The edge from one turn to another, or -1. */
export function edgeBetween(edges: Edges, earlier: number, later: number): number {
  let low = edges.start[earlier] ?? 0;
  let high = edges.start[earlier + 1] ?? 0;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((edges.to[middle] ?? 0) < later) low = middle + 1;
    else high = middle;
  }
  return low < (edges.start[earlier + 1] ?? 0) && edges.to[low] === later ? low : -1;
}

/** Times and labour of re-ganging by pair of designs, asked of the calendar once for every turn and design. */
class FollowTimes {
  private readonly model: Model;
  private readonly designs: number;
  private readonly work: Float64Array;
  private readonly money: SearchMoney;
  private readonly costs: Float64Array;
  private readonly shares: Int8Array;
  private readonly built: Float64Array;
  private readonly out: Float64Array;

  constructor(model: Model, money: SearchMoney) {
    this.model = model;
    this.money = money;
    this.designs = model.designCodes.length;
    this.work = new Float64Array(this.designs * this.designs).fill(-1);
    this.costs = new Float64Array(this.designs * this.designs).fill(-1);
    this.shares = sharesOf(model);
    this.built = new Float64Array(model.turnIds.length * this.designs).fill(Number.NaN);
    this.out = new Float64Array(model.turnIds.length * this.designs).fill(Number.NaN);
  }

  fits(earlier: number, later: number): boolean {
    if (earlier === later) return false;
    const [left, right] = [this.model.design[earlier] ?? 0, this.model.design[later] ?? 0];
    if (left === right) return true;
    if (this.shares[left * this.designs + right] === 0) return false;
    const flownAt = (this.model.to[earlier] ?? 0) + this.model.flyOnUnits;
    const room = (this.model.from[later] ?? 0) - flownAt;
    // Work never takes less than clock time, so what is longer cannot fit and needs no calendar.
    return this.units(left, right) <= room && this.builtFrom(left, later) >= flownAt;
  }

  units(left: number, right: number): number {
    const place = left * this.designs + right;
    const known = this.work[place] ?? -1;
    if (known >= 0) return known;
    const units = this.model.regang.units(left, right);
    this.work[place] = units;
    return units;
  }

  labour(left: number, right: number): number {
    const place = left * this.designs + right;
    const known = this.costs[place] ?? -1;
    if (known >= 0) return known;
    const { model } = this;
    const grains = model.flyOnGrains + model.regang.digits(left, right) * model.grains.perHourDigit;
    const labour = Number(grains) * this.money.perGrain;
    this.costs[place] = labour;
    return labour;
  }

  builtFrom(left: number, later: number): number {
    const place = later * this.designs + left;
    const known = this.built[place] ?? Number.NaN;
    if (!Number.isNaN(known)) return known;
    const work = this.units(left, this.model.design[later] ?? 0);
    const at = this.model.calendar.workBefore(this.model.from[later] ?? 0, work);
    this.built[place] = at;
    return at;
  }

  takenOutAt(earlier: number, right: number): number {
    const place = earlier * this.designs + right;
    const known = this.out[place] ?? Number.NaN;
    if (!Number.isNaN(known)) return known;
    const work = this.units(this.model.design[earlier] ?? 0, right);
    const at = this.model.calendar.workAfter(this.model.to[earlier] ?? 0, work) + this.model.cleanUnits;
    this.out[place] = at;
    return at;
  }
}

function sharesOf(model: Model): Int8Array {
  const designs = model.designCodes.length;
  const count = model.codes.length;
  const shares = new Int8Array(designs * designs);
  const holders: number[][] = model.codes.map(() => []);
  for (let design = 0; design < designs; design += 1) {
    for (let component = 0; component < count; component += 1) {
      if ((model.pieces[design * count + component] ?? 0) > 0) holders[component]?.push(design);
    }
  }
  for (const list of holders) {
    for (const left of list) for (const right of list) shares[left * designs + right] = 1;
  }
  return shares;
}

function greatest(list: readonly bigint[]): number {
  return list.reduce((high, grains) => Math.max(high, Number(grains)), 0);
}

/** Chooses the money of the search by the greatest amount that any plan could come to. */
function searchMoney(model: Model): SearchMoney {
  const minor = 10 ** -model.grains.places;
  const count = model.codes.length;
  const { flyOnGrains, grains, regang } = model;
  let hardest = 0;
  const designs = model.designCodes.length;
  for (let left = 0; left < designs; left += 1) {
    for (let right = 0; right < designs; right += 1) hardest = Math.max(hardest, regang.hours(left, right));
  }
  const regangGrains = hardest * 10 ** regang.places * Number(grains.perHourDigit);
  const perTurn =
    greatest(model.assembleGrains) + greatest(model.breakDownGrains) + Number(flyOnGrains) + regangGrains;
  let [first, last] = [Infinity, -Infinity];
  for (const [turn, from] of model.from.entries()) {
    first = Math.min(first, from);
    last = Math.max(last, model.to[turn] ?? from);
  }
  const days = Number.isFinite(first)
    ? (last - first) / (86_400_000 * model.instants.scale.unitsPerMs) + 3000
    : 3000;
  let perDay = 0;
  for (const [turn, design] of model.design.entries()) {
    if (turn >= 0)
      for (let part = 0; part < count; part += 1)
        perDay += (model.pieces[design * count + part] ?? 0) * Number(model.hire[part] ?? 0n);
  }
  for (const { pieces } of model.loose)
    for (const [part, quantity] of pieces) perDay += quantity * Number(model.hire[part] ?? 0n);
  const changes = Number(model.changeGrains) * (model.told?.length ?? 0);
  const highest = perTurn * model.turnIds.length + perDay * days + changes;
  const exact = highest < 2 ** 52;
  return { exact, perGrain: exact ? 1 : minor, tolerance: exact ? 0.5 : 1e-6 };
}
