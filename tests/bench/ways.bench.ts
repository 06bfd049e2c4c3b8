// All ways out of one shortfall of a large job, for shortfalls spread over its weeks.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openBook } from '../../core/book/open.ts';
import { readJobFacts } from '../../core/procedures/job-facts.ts';
import { planJob } from '../../core/procedures/job-plan.ts';
import { shownShortfalls } from '../../core/procedures/shown-plan.ts';
import { waysOut } from '../../core/procedures/ways-out.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { largeJob, makeLargeBook } from './large-book.ts';
import { median, referenceMs } from './reference-work.ts';

const size = { seed: 1, pours: 75, weeks: 12 };
const shortfallsAsked = 9;

export const bench: Bench = { name: 'Ways out of a shortfall', run: lines };

async function* lines(): AsyncGenerator<BenchLine> {
  const folder = mkdtempSync(path.join(tmpdir(), 'regang-ways-'));
  try {
    const file = path.join(folder, 'large.regang');
    const made = await makeLargeBook(file, size);
    const what = `${made.turns} turns x ${made.components} components x ${size.weeks} weeks, seed ${size.seed}`;
    const times: number[] = [];
    let ways = 0;
    let tried = 0;
    for (const question of await questions(file)) {
      const startedMs = performance.now();
      const answer = waysOut(question);
      times.push(performance.now() - startedMs);
      ways += answer.ways.length;
      tried += answer.tried.reduce((sum, each) => sum + each.tried, 0);
    }
    const reference = referenceMs();
    const middle = median(times);
    yield {
      what: `${what}: all ways out of one shortfall, median of ${times.length}`,
      value: ms(middle),
      aim: 'under 2 s',
    };
    yield { what: `${what}: the longest of them`, value: ms(Math.max(...times)) };
    yield { what: `plans made for them, and ways found`, value: `${tried}, ${ways}` };
    yield { what: 'median over the fixed reference computation', value: (middle / reference).toFixed(2) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function questions(file: string) {
  const opened = await openBook(file, { mode: 'open', now: '2026-02-20T16:00:00-05:00' });
  if (!opened.ok) throw new Error(opened.error.message);
  const plan = await opened.value.read(async (reader) => {
    const facts = await readJobFacts(reader, largeJob);
    return facts.ok ? planJob(facts.value) : facts;
  });
  await opened.value.close();
  if (!plan.ok) throw new Error(plan.error.message);
  const shortfalls = shownShortfalls(plan.value);
  if (shortfalls.length === 0) throw new Error('The large job is short of nothing.');
  const { nowMs } = plan.value.facts.yard;
  return Array.from(
    { length: Math.min(shortfallsAsked, shortfalls.length) },
    (_, index) => shortfalls[Math.floor((index * shortfalls.length) / shortfallsAsked)],
  ).flatMap((shortfall) =>
    shortfall === undefined ? [] : [{ plan: plan.value, shortfall, others: [], nowMs }],
  );
}

function ms(value: number): string {
  return `${value.toFixed(0)} ms`;
}
