// Quantities that came at different moments and go first in, first out: what is to clean, what is away from the plan.
// A reversal takes exactly what the movement it takes back had brought, and puts back what that had taken.

export interface Lot {
  readonly quantity: number;
  /** Epoch milliseconds. */
  readonly sinceMs: number;
  /** The movement that brought it; null for what was there when the plan began. */
  readonly movement: string | null;
}

export class Lots<L extends Lot> {
  readonly #byKey = new Map<string, L[]>();
  readonly #takenBy = new Map<string, readonly { readonly key: string; readonly lot: L }[]>();

  put(key: string, lot: L): void {
    if (lot.quantity <= 0) return;
    const lots = this.#byKey.get(key) ?? [];
    const after = lots.findLastIndex((each) => each.sinceMs <= lot.sinceMs);
    lots.splice(after + 1, 0, lot);
    this.#byKey.set(key, lots);
  }

  /**
   * So many off the lots of the lowest rank, the oldest first; fewer where there are not as many.
   * @param by the movement that takes them
   */
  take(key: string, quantity: number, by: string | null, rank: (lot: L) => number): readonly L[] {
    const lots = this.#byKey.get(key) ?? [];
    const inOrder = [...lots].sort((one, other) => rank(one) - rank(other));
    const taken: L[] = [];
    let rest = quantity;
    for (const lot of inOrder) {
      if (rest <= 0) break;
      const some = Math.min(rest, lot.quantity);
      rest -= some;
      taken.push({ ...lot, quantity: some });
      const at = lots.indexOf(lot);
      if (some === lot.quantity) lots.splice(at, 1);
      else lots[at] = { ...lot, quantity: lot.quantity - some };
    }
    if (by !== null && taken.length > 0)
      this.#takenBy.set(by, [...(this.#takenBy.get(by) ?? []), ...taken.map((lot) => ({ key, lot }))]);
    return taken;
  }

  /** What a movement took from a key, to be put back as it was; nothing where it took none. */
  takenBy(movement: string, key: string): readonly L[] {
    return (this.#takenBy.get(movement) ?? []).filter((each) => each.key === key).map(({ lot }) => lot);
  }

  all(): readonly L[] {
    return [...this.#byKey.values()].flat();
  }
}
