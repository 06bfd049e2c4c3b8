// The board of a large job in a real browser through the local door: how long the core takes to answer it and
// the page to draw it, and the frames while a pour is dragged and while it is moved by the arrow keys.
import { rmSync } from 'node:fs';
import path from 'node:path';
import { doorMissing, newFolder, openDoor } from '../doors/doors.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { dragPour, drawBoard, type Drawn, framesWhile, keyPour, noteDrawing } from './board-page.ts';
import { callTimes } from './core-calls.ts';
import { largeJob, makeLargeBook } from './large-book.ts';
import { median, referenceMs } from './reference-work.ts';

const size = { seed: 1, pours: 75, weeks: 12 };
const rounds = 5;
const slowFrameMs = 50;

export const bench: Bench = { name: 'Board of a large job', run: lines };

async function* lines(): AsyncGenerator<BenchLine> {
  const folder = newFolder();
  const file = path.join(folder, 'large.regang');
  try {
    const made = await makeLargeBook(file, size);
    const job = `${made.pours} pours, ${made.turns} turns x ${made.components} components x ${size.weeks} weeks, seed ${size.seed}`;
    yield { what: job, value: '' };
    const reference = referenceMs();
    yield { what: 'fixed reference computation', value: ms(reference) };
    yield* coreLines(file, reference);
    const missing = doorMissing('local');
    if (missing === null) yield* pageLines(file, reference);
    else yield { what: `Not looked at in a browser, because ${missing}`, value: '' };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function* coreLines(file: string, reference: number): AsyncGenerator<BenchLine> {
  const times = await callTimes(file, largeJob);
  yield { what: 'core: board.read, the first of the process', value: ms(times.firstBoard) };
  yield* withRatio('core: board.read, median when warm', times.board, reference, 'under 150 ms');
  yield* withRatio('core: plan.whatif of a move not asked before', times.whatif, reference, 'under 200 ms');
  yield* withRatio('core: curve.read, median when warm', times.curve, reference);
}

const views = [
  { words: 'two weeks', address: '/#/board?from=2026-03-16' },
  { words: 'every week', address: '/#/board?weeks=all' },
];

async function* pageLines(file: string, reference: number): AsyncGenerator<BenchLine> {
  const door = await openDoor('local', {
    book: file,
    context: { viewport: { width: 1920, height: 1080 }, colorScheme: 'light' },
  });
  const { page } = door;
  try {
    const { origin } = new URL(page.url());
    await noteDrawing(page);
    for (const { words, address } of views) {
      const drawn: Drawn[] = [];
      for (let round = 0; round <= rounds; round += 1) drawn.push(await drawBoard(page, origin + address));
      yield* drawnLines(words, drawn.slice(1), reference);
      const dragged = await framesWhile(page, () => dragPour(page));
      yield* frameLines(`${words}: a pour dragged`, dragged, reference);
      await page.keyboard.press('Escape');
      const keyed = await framesWhile(page, () => keyPour(page));
      yield* frameLines(`${words}: a pour moved by Shift and an arrow key`, keyed, reference);
    }
  } finally {
    await door.close();
  }
}

/** Medians; the first loading, which also fetches and compiles the scripts, is left out. */
function* drawnLines(words: string, drawn: readonly Drawn[], reference: number): Generator<BenchLine> {
  const middle = (part: (one: Drawn) => number): number => median(drawn.map(part));
  const whole = middle((one) => one.whole);
  yield* withRatio(`${words}: from navigation to ${drawn[0]?.rows ?? 0} pours drawn`, whole, reference);
  yield { what: `${words}: of that, waiting for the core`, value: ms(middle((one) => one.core)) };
  const drawing = middle((one) => one.drawing);
  yield* withRatio(`${words}: from the core's answer to drawn`, drawing, reference, 'under 200 ms');
}

function* frameLines(what: string, frames: readonly number[], reference: number): Generator<BenchLine> {
  const slow = frames.filter((one) => one > slowFrameMs).length;
  yield* withRatio(`${what}: longest of ${frames.length} frames`, Math.max(...frames), reference);
  yield { what: `${what}: frames over ${slowFrameMs} ms`, value: String(slow), aim: '0' };
}

function* withRatio(what: string, taken: number, reference: number, aim?: string): Generator<BenchLine> {
  yield { what, value: ms(taken), ...(aim === undefined ? {} : { aim }) };
  yield { what: `${what}, over the reference`, value: (taken / reference).toFixed(2) };
}

function ms(value: number): string {
  return `${value.toFixed(0)} ms`;
}
