// Runs every `*.bench.ts` beside it, one after another, and prints what each found: times, ratios, the sizes
// and seeds they belong to. `npm run bench`, or with part of a name to run only those.
import { readdirSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import type { Bench } from './bench-line.ts';

const wanted = process.argv[2] ?? '';
const files = readdirSync(import.meta.dirname).filter(
  (name) => name.endsWith('.bench.ts') && name.includes(wanted),
);
if (files.length === 0) throw new Error(`No bench has "${wanted}" in its name.`);

for (const file of files.sort()) {
  const { bench } = (await import(`./${file}`)) as { bench: Bench };
  console.log(`\n${bench.name}`);
  for await (const { what, value, aim } of bench.run()) {
    console.log(`  ${what.padEnd(96)} ${value.padStart(12)}${aim === undefined ? '' : `   (aim: ${aim})`}`);
    // Lets what is printed come out before the next long sum.
    await setTimeout(1);
  }
}
