// Finding things by their code. The book's foreign keys promise that a code it holds names something, so
// a missing one is a bug and not a refusal.

export function byCode<T extends { readonly code: string }>(things: readonly T[]): ReadonlyMap<string, T> {
  return new Map(things.map((thing) => [thing.code, thing]));
}

export function found<T>(things: ReadonlyMap<string, T>, code: string): T {
  const thing = things.get(code);
  if (thing === undefined) throw new Error(`The book names ${code}, which it does not hold.`);
  return thing;
}
