// The levelling core on the open benchmark sets: `npm run bench:level`, with another number of schedules or another folder
// of the sets as its arguments. Without the whole sets it takes the part copied beside the tests, and says so.
import path from 'node:path';
import { measureSet } from '../plan/level/measure-set.ts';
import { copied, hasSets, readSet, setNames, type SetName } from '../plan/level/open-sets.ts';

const schedules = Number(process.argv[2] ?? 5000);
const whole = process.argv[3] ?? path.join(import.meta.dirname, '..', '..', '..', 'shared', 'data', 'psplib');
const folder = hasSets(whole) ? whole : copied;

/**
 * What published heuristics reach on the full sets with 5,000 schedules, j30 from the optimum, j60 and j120 from the critical
 * path. L. Wang and C. Fang, A hybrid estimation of distribution algorithm for solving the resource-constrained project
 * scheduling problem, Expert Systems with Applications 39 (2012) 2451-2460: 0.14, 11.43 and 33.61 of their own (table 7), and for
 * j120 of others 32.18 (Debels and Vanhoucke 2007), 32.54 (Valls et al. 2008) and 33.10 (Debels et al. 2006) (table 10). The
 * least of j30 and j60, 0.04 and 10.95, are from memory.
 */
const published: Readonly<Record<SetName, string>> = {
  j30: '0.04 to 0.14',
  j60: '10.95 to 11.43 (full set)',
  j120: '32.18 to 33.61 (full set)',
};

console.log(
  folder === whole
    ? `The whole sets of ${whole}`
    : `The whole sets are not in ${whole}: the part copied beside the tests is taken.`,
);
const head = [
  'set',
  'instances',
  'schedules',
  '% over best',
  '% over path',
  'best over path',
  'published',
  'proved',
  'seconds',
];
const rows = setNames.map((name) => {
  const instances = readSet(folder, name);
  const began = performance.now();
  const measured = measureSet(instances, schedules);
  const seconds = (performance.now() - began) / 1000;
  if (measured.problems.length > 0) throw new Error(measured.problems.join('\n'));
  return [
    name,
    String(measured.instances),
    String(schedules),
    measured.overBest.toFixed(3),
    measured.overPath.toFixed(2),
    measured.bestOverPath.toFixed(2),
    published[name],
    `${((100 * measured.proved) / measured.instances).toFixed(1)} %`,
    seconds.toFixed(1),
  ];
});
const widths = head.map((title, column) =>
  Math.max(title.length, ...rows.map((row) => row[column]?.length ?? 0)),
);
for (const row of [head, ...rows])
  console.log(row.map((cell, column) => cell.padStart(widths[column] ?? 0)).join('  '));
console.log(
  'best: the optimum of j30, else the best known makespan; path: the critical path; proved by a bound.',
);
