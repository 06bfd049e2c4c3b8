// What told instructions and fixed choices make of the follows: every way to come to a turn other than the one told costs
// the change besides, and of follows that a fixed choice forbids there are none.
import type { Model } from './model.ts';
import { leftOpen } from './model-choices.ts';

/** Changed instructions are counted where a gang arrives; a told break-down where it leaves. */
export class ChangeCounts {
  private readonly arrivals: Int32Array;
  private readonly breakDowns: Int32Array;
  private readonly assemblies: Uint8Array;
  private readonly follows: ReadonlySet<number>;

  constructor({ told, turnIds }: Model) {
    const turns = turnIds.length;
    this.arrivals = new Int32Array(turns);
    this.breakDowns = new Int32Array(turns);
    this.assemblies = new Uint8Array(turns);
    const follows = new Set<number>();
    for (const { earlier, later } of told ?? []) {
      if (later < 0) {
        this.breakDowns[earlier] = 1;
        continue;
      }
      this.arrivals[later] = (this.arrivals[later] ?? 0) + 1;
      if (earlier < 0) this.assemblies[later] = 1;
      else follows.add(earlier * turns + later);
    }
    this.follows = follows;
  }

  begin(turn: number): number {
    return (this.arrivals[turn] ?? 0) - (this.assemblies[turn] ?? 0);
  }

  follow(earlier: number, later: number): number {
    const kept = this.follows.has(earlier * this.arrivals.length + later) ? 1 : 0;
    return (this.arrivals[later] ?? 0) - kept + (this.breakDowns[earlier] ?? 0);
  }
}

/** Whether fixed choices leave room for the follow. */
export function isLeftOpen({ fixed, design }: Model, earlier: number, later: number): boolean {
  const after = fixed.after[earlier] ?? leftOpen;
  const before = fixed.before[later] ?? leftOpen;
  if (after !== leftOpen && after !== later) return false;
  if (before !== leftOpen && before !== earlier) return false;
  return fixed.keepsDesign[earlier] !== 1 || design[earlier] === design[later];
}

/** Whether every plan uses the follow. */
export function isFixedFollow({ fixed }: Model, earlier: number, later: number): boolean {
  return fixed.after[earlier] === later;
}
