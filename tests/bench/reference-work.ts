// A fixed amount of plain arithmetic: times relative to it can be compared between machines and days.

/** Milliseconds that ten passes over two million numbers take, the median of five. */
export function referenceMs(): number {
  const numbers = Float64Array.from({ length: 2_000_000 }, (_, index) => (index * 7919) % 1_000_003);
  const times: number[] = [];
  let sink = 0;
  for (let round = 0; round < 5; round += 1) {
    const started = performance.now();
    for (let pass = 0; pass < 10; pass += 1) {
      let sum = 0;
      for (let index = 0; index < numbers.length; index += 1)
        sum = Math.max(sum * 0.999, numbers[index] ?? 0);
      sink += sum;
    }
    times.push(performance.now() - started);
  }
  if (!Number.isFinite(sink)) throw new Error('The reference computation went astray.');
  return median(times);
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((left, right) => left - right);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
