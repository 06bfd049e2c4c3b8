// Of two designs, the components that either has: follows are looked at by the ten thousand, and most components are in
// neither of their two designs.

/** By place of the components in the list of `count`; each pair is made when it is first asked for. */
export class PairPieces {
  private readonly pieces: Int32Array;
  private readonly count: number;
  private readonly designs: number;
  private readonly known: (Int32Array | undefined)[];

  /** `pieces` holds quantities, `count` of one design after another. */
  constructor(pieces: Int32Array, count: number) {
    this.pieces = pieces;
    this.count = count;
    this.designs = count === 0 ? 0 : pieces.length / count;
    this.known = Array.from({ length: this.designs * this.designs });
  }

  of(left: number, right: number): Int32Array {
    const place = left * this.designs + right;
    const known = this.known[place];
    if (known !== undefined) return known;
    const made: number[] = [];
    for (let index = 0; index < this.count; index += 1) {
      const [before, after] = [
        this.pieces[left * this.count + index],
        this.pieces[right * this.count + index],
      ];
      if ((before ?? 0) > 0 || (after ?? 0) > 0) made.push(index);
    }
    return (this.known[place] = Int32Array.from(made));
  }
}
