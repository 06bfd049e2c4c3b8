// A code for the other hand of a design: GBL and GBR change their last letter, others get one; the first that is
// not taken yet.

export function otherHandCode(code: string, hand: 'left' | 'right' | '', taken: ReadonlySet<string>): string {
  const last = code.slice(-1);
  const swapped = last === 'L' ? 'R' : last === 'R' ? 'L' : undefined;
  const other = hand === 'left' ? 'R' : 'L';
  return firstFree(swapped === undefined ? code + other : code.slice(0, -1) + swapped, taken);
}

/** GA, GA2, GA3 ...: the first that is not taken. */
export function firstFree(code: string, taken: ReadonlySet<string>): string {
  if (!taken.has(code)) return code;
  let number = 2;
  while (taken.has(`${code}${number}`)) number += 1;
  return `${code}${number}`;
}
