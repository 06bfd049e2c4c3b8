// Random numbers that can be thrown again: the same seed, the same throws.

export interface Dice {
  readonly seed: number;
  /** A whole number from 0 up to and without `below`. */
  below(below: number): number;
  of<T>(list: readonly T[]): T;
  chance(percent: number): boolean;
}

/** With SEED in the environment that one, else a new one; a test prints it. */
export function someSeed(): number {
  const given = process.env['SEED'];
  return given === undefined ? Math.floor(Math.random() * 2 ** 31) : Number(given);
}

export function dice(seed: number): Dice {
  let state = seed >>> 0;
  // A small mixing generator (three xor-shifts and two multiplications a throw); good enough to choose with.
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  return {
    seed,
    below,
    of: (list) => {
      if (list.length === 0) throw new Error('Nothing to choose from.');
      return list[below(list.length)]!;
    },
    chance: (percent) => below(100) < percent,
  };
}
