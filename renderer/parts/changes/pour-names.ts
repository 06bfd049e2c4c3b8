// Which pour somebody means: by its code, its name, or the number in its code.

export interface PourName {
  readonly code: string;
  readonly name: string;
}

/** Code first, then name, then the number in the code, then the beginning of a name: the first that fits. */
export function matching(who: string, pours: readonly PourName[]): readonly PourName[] {
  const said = who.toLowerCase();
  const ways: readonly ((pour: PourName) => boolean)[] = [
    (pour) => pour.code.toLowerCase() === said,
    (pour) => withoutZeros(pour.code) === withoutZeros(said),
    (pour) => pour.name.toLowerCase() === said,
    (pour) => /^\d+$/u.test(said) && numberIn(pour.code) === Number(said),
    (pour) =>
      pour.name
        .toLowerCase()
        .split(/[^\p{L}\p{N}-]+/u)
        .includes(said),
    (pour) => pour.name.toLowerCase().startsWith(said) || pour.code.toLowerCase().startsWith(said),
  ];
  for (const fits of ways) {
    const found = pours.filter(fits);
    if (found.length > 0) return found;
  }
  return [];
}

/** "P07" and "p7" are the same pour to whoever says it. */
function withoutZeros(code: string): string {
  return code.toLowerCase().replaceAll(/(?<!\d)0+(?=\d)/gu, '');
}

function numberIn(code: string): number | undefined {
  const digits = /(\d+)\D*$/u.exec(code)?.[1];
  return digits === undefined ? undefined : Number(digits);
}
