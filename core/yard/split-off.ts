// Takes a quantity off a list of parts.

/** So many pieces off the parts, first to last; what is left stays in the list. Fewer where there are not as many. */
export function splitOff<T extends { readonly quantity: number }>(parts: T[], wanted: number): readonly T[] {
  const taken: T[] = [];
  let rest = wanted;
  for (const [index, part] of parts.entries()) {
    const quantity = Math.min(part.quantity, rest);
    if (quantity === 0) continue;
    taken.push({ ...part, quantity });
    parts[index] = { ...part, quantity: part.quantity - quantity };
    rest -= quantity;
  }
  return taken;
}
