// A yard with 1,000,000 movements in its book: quantities at any date against the plain sum over the ledger, booking
// a ticket of 40 lines with what the disk takes of it, the first page of movements under every filter, opening the
// book, and what so long a ledger costs the plan.
import { closeSync, fsyncSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import path from 'node:path';
import type { HistoryFilter, MovementFilter } from '../../core/book/book.ts';
import { loadSqlite } from '../../core/book/load-sqlite.ts';
import { openBook } from '../../core/book/open.ts';
import type { OpenBook } from '../../core/book/open.ts';
import { readJobFacts } from '../../core/procedures/job-facts.ts';
import type { Movement } from '../../core/yard/movement.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';
import { newFolder } from '../doors/doors.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { numbersFrom } from './jobs.ts';
import { ledgerFrom, ledgerTo, makeLargeLedger } from './large-ledger.ts';
import { median, referenceMs } from './reference-work.ts';
import { deliver, wholeTicketMs } from './whole-ticket.ts';

const size = { seed: 1, movements: 1_000_000 };
const ticketLines = 40;
const rounds = 15;
const opensAt = '2026-03-11T07:00:00Z';

export const bench: Bench = { name: 'Yard with a long ledger', run: lines };

async function* lines(): AsyncGenerator<BenchLine> {
  const folder = newFolder();
  const file = path.join(folder, 'ledger.regang');
  try {
    const made = await makeLargeLedger(file, size);
    const megabytes = (statSync(file).size / 1e6).toFixed(0);
    const what = `${size.movements} movements, ${made.keys} kept quantities, ${made.levels} levels, ${megabytes} MB, seed ${size.seed}`;
    yield { what, value: '' };
    yield { what: 'fixed reference computation', value: ms(referenceMs()) };
    yield* openingLines(file);
    const book = await opened(file);
    try {
      yield* quantityLines(book, file);
      yield* pageLines(book);
      yield* bookingLines(book, file);
    } finally {
      await book.close();
    }
    yield* planLines(file, path.join(folder, 'demo.regang'));
    const checking = await opened(file);
    const started = performance.now();
    const problems = await checking.read((reader) => reader.check());
    yield { what: 'the whole check of the book', value: ms(performance.now() - started) };
    yield { what: 'problems that it finds', value: String(problems.length), aim: '0' };
    await checking.close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function opened(file: string): Promise<OpenBook> {
  const book = await openBook(file, { mode: 'open', now: opensAt });
  if (!book.ok) throw new Error(book.error.message);
  return book.value;
}

async function* openingLines(file: string): AsyncGenerator<BenchLine> {
  const times: number[] = [];
  for (let round = 0; round < 7; round += 1) {
    const started = performance.now();
    const book = await opened(file);
    await book.read((reader) => reader.changeNumber());
    times.push(performance.now() - started);
    await book.close();
  }
  yield { what: 'opening the book, the first time', value: ms(times[0] ?? Number.NaN) };
  yield { what: 'opening the book, median', value: ms(median(times)), aim: 'under 300 ms' };
}

/** The plainest way to the same figures: every movement from the first one on. */
const plainSum = `
  SELECT component, owner, place, state, sum(pieces) AS quantity FROM (
    SELECT component, owner, to_location AS place, condition_after AS state, quantity AS pieces
    FROM movement WHERE at_ms <= ?
    UNION ALL
    SELECT component, owner, from_location, condition, -quantity FROM movement WHERE at_ms <= ?
  ) GROUP BY component, owner, place, state HAVING sum(pieces) <> 0
  ORDER BY component, owner, place, state`;

async function* quantityLines(book: OpenBook, file: string): AsyncGenerator<BenchLine> {
  const next = numbersFrom(size.seed + 1);
  const sqlite = await loadSqlite();
  if (!sqlite.ok) throw new Error(sqlite.error.message);
  const handle = sqlite.value(file, { readonly: true });
  const [kept, plain]: [number[], number[]] = [[], []];
  try {
    for (let round = 0; round < rounds; round += 1) {
      const atMs = ledgerFrom + Math.floor(next() * (ledgerTo - ledgerFrom));
      const at = new Date(atMs).toISOString();
      const started = performance.now();
      const stock = await book.read((reader) => reader.stock(at));
      kept.push(performance.now() - started);
      // The sum takes seconds: five of them will do.
      if (round >= 5) continue;
      const begun = performance.now();
      const summed = handle.prepare<[number, number], { quantity: number }>(plainSum).all(atMs, atMs);
      plain.push(performance.now() - begun);
      const isSame =
        summed.length === stock.length &&
        summed.every(({ quantity }, index) => quantity === stock[index]?.quantity);
      if (!isSame) throw new Error(`At ${at} the two ways to the quantities differ.`);
    }
  } finally {
    handle.close();
  }
  yield {
    what: 'all quantities at a random date in all places, median',
    value: ms(median(kept)),
    aim: 'under 50 ms',
  };
  yield { what: 'the same, longest', value: ms(Math.max(...kept)) };
  yield { what: 'the plain sum over the ledger, median', value: ms(median(plain)) };
  const ratio = (median(kept.slice(0, 5)) / median(plain)).toFixed(4);
  yield { what: 'the first over the second, at the same dates', value: ratio, aim: 'under 0.1' };
}

const filters: readonly Omit<MovementFilter, 'limit'>[] = [
  {},
  { component: 'LK' },
  { location: 'ENN' },
  { location: 'SCRAP' },
  { owner: 'MHW' },
  { paper: 'paper-3000' },
  { reason: 'scrap' },
  { condition: 'quarantine' },
  { component: 'LK', owner: 'OURS', location: 'ENN' },
  { location: 'ENN', reason: 'lost' },
  { owner: 'MHW', location: 'ENN', condition: 'scrapped' },
  { location: 'ENN', owner: 'TFH', reason: 'issue' },
];
const histories: readonly Omit<HistoryFilter, 'limit'>[] = [
  { component: 'LK' },
  { component: 'LK', owner: 'OURS', location: 'ENN', condition: 'ready' },
  { component: 'LK', condition: 'scrapped' },
];

/** The median of five. */
async function timed(ask: () => Promise<unknown>): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < 5; round += 1) {
    const started = performance.now();
    await ask();
    times.push(performance.now() - started);
  }
  return median(times);
}

function wordsOf(of: object): string {
  return Object.entries(of).flat().join(' ') || 'all';
}

async function* pageLines(book: OpenBook): AsyncGenerator<BenchLine> {
  for (const filter of filters) {
    const took = await timed(() => book.read((reader) => reader.movements({ ...filter, limit: 201 })));
    yield { what: `first page of movements: ${wordsOf(filter)}`, value: ms(took), aim: 'under 100 ms' };
  }
  for (const of of histories) {
    const took = await timed(() => book.read((reader) => reader.history({ ...of, limit: 201 })));
    yield { what: `first page of a history: ${wordsOf(of)}`, value: ms(took), aim: 'under 100 ms' };
  }
}

async function* bookingLines(book: OpenBook, file: string): AsyncGenerator<BenchLine> {
  const codes = await book.read(async (reader) => (await reader.components()).map(({ code }) => code));
  const standing = codes.slice(0, ticketLines).map((component, index) => ({
    component,
    gang: `G-${String((index % 12) + 1).padStart(2, '0')}`,
  }));
  const bookAll = async (id: string, more: Pick<Movement, 'reason' | 'at'>): Promise<number> => {
    const movements = standing.map(({ component, gang }, index): Movement => {
      const isStrip = more.reason === 'strip';
      const ends = isStrip ? { from: gang, to: 'ENN' } : { from: 'MHW', to: gang };
      const conditionAfter = isStrip ? 'to-clean' : 'ready';
      const rest = { noteNumber: null, remark: null, basis: null, basisDate: null, reverses: null };
      const of = { component, owner: 'MHW', quantity: isStrip ? 1 : rounds, condition: 'ready' } as const;
      return {
        id: `${id}-${index}`,
        ...of,
        ...ends,
        conditionAfter,
        who: 'bench',
        ...rest,
        paper: id,
        ...more,
      };
    });
    const started = performance.now();
    const meta = { commandId: id, name: 'ticket.book', at: more.at, who: 'bench' };
    const done = await book.command(meta, async (writer) => {
      await writer.appendMovements(movements, more.at);
      return { ok: true, value: null };
    });
    if (!done.ok) throw new Error(done.error.message);
    return performance.now() - started;
  };
  await bookAll('delivery', { reason: 'delivery', at: new Date(ledgerTo).toISOString() });
  const [whole, written]: [number[], number[]] = [[], []];
  const log = `${file}-wal`;
  for (let round = 1; round <= rounds; round += 1) {
    const before = statSync(log).size;
    const at = new Date(ledgerTo + round * 60_000).toISOString();
    whole.push(await bookAll(`ticket-${round}`, { reason: 'strip', at }));
    written.push(Math.max(0, statSync(log).size - before));
  }
  const asAsked: number[] = [];
  const ofTicket = codes.slice(0, ticketLines);
  await deliver(book, ofTicket, rounds, new Date(ledgerTo).toISOString());
  for (let round = 1; round <= rounds; round += 1) {
    const at = new Date(ledgerTo + (rounds + round) * 60_000).toISOString();
    asAsked.push(await wholeTicketMs(book, `whole-ticket-${round}`, ofTicket, at));
  }
  // The log grows until it is taken into the book, and is then written over from its beginning.
  const bytes = Math.max(4096, ...written);
  const what = `booking a ticket of ${ticketLines} lines`;
  yield { what: `${what}, median`, value: ms(median(whole)), aim: 'under 20 ms' };
  yield { what: `${what}, longest (the log is taken into the book)`, value: ms(Math.max(...whole)) };
  yield {
    what: 'the same asked as ticket.book, with all that it reads and tells, median',
    value: ms(median(asAsked)),
  };
  const disk = `the disk alone: writing ${(bytes / 1000).toFixed(0)} kB and one fsync`;
  yield { what: disk, value: ms(fsyncMs(`${file}-fsync`, bytes)) };
}

function fsyncMs(file: string, bytes: number): number {
  const descriptor = openSync(file, 'w');
  const times: number[] = [];
  try {
    for (let round = 0; round < rounds; round += 1) {
      const started = performance.now();
      writeSync(descriptor, Buffer.alloc(bytes, round + 1));
      fsyncSync(descriptor);
      times.push(performance.now() - started);
    }
  } finally {
    closeSync(descriptor);
  }
  return median(times);
}

/** The board rests on these facts; what else it does is the same for any ledger. */
async function* planLines(file: string, demo: string): AsyncGenerator<BenchLine> {
  const made = await makeDemo(demo, { at: '2026-02-20T16:00:00-05:00', who: 'bench' });
  if (!made.ok) throw new Error(made.error.message);
  yield { what: 'what the plan reads of the demo book, median', value: ms(await factsMs(demo)) };
  const large = await factsMs(file);
  yield {
    what: 'the same with the long ledger, two weeks of it after the start of the plan',
    value: ms(large),
  };
}

async function factsMs(file: string): Promise<number> {
  const book = await opened(file);
  const took = await timed(async () => {
    const facts = await book.read((reader) => readJobFacts(reader, 'TB26'));
    if (!facts.ok) throw new Error(facts.error.message);
  });
  await book.close();
  return took;
}

function ms(value: number): string {
  return `${value.toFixed(1)} ms`;
}
