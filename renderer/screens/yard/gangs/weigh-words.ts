// A count by weight in words, with what it may be off by.

/** "40 pieces", or "40 pieces, at least 39 and at most 41". */
export function countedWords(counted: {
  readonly quantity: number;
  readonly least: number;
  readonly most: number;
}): string {
  const { quantity, least, most } = counted;
  const pieces = `${quantity} ${quantity === 1 ? 'piece' : 'pieces'}`;
  return least === most ? pieces : `${pieces}, at least ${least} and at most ${most}`;
}
