// A process that writes to the book is killed at moments nobody chose. Whatever it had acknowledged is in the
// book, what it had not is there whole or not at all, and the next one writes without any cleaning up.
import { spawn } from 'node:child_process';
import type { ChildProcessByStdio } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import path from 'node:path';
import type { Readable } from 'node:stream';
import { setTimeout as wait } from 'node:timers/promises';
import { describe, expect, onTestFinished, test } from 'vitest';
import type { BookedMovement } from '../../core/book/book.ts';
import { openBook } from '../../core/book/open.ts';
import { allMigrations } from '../../migrations/all.ts';
import { aFolder, aYard, done, now, opened, openingFigure } from '../book/a-book.ts';
import { dice, someSeed } from '../book/dice.ts';
import type { Dice } from '../book/dice.ts';
import { slowMigration, ticketLines } from './writer-process.ts';

const script = path.join(import.meta.dirname, 'writer-process.ts');

interface Writer {
  /** Waits until it has said such a line. */
  said(line: string): Promise<void>;
  /** Kills it on the spot and answers what it had said. */
  kill(): Promise<readonly string[]>;
}

/**
 * @param maximumKb no file may grow larger than that, as on a full disk; without it as large as it likes
 * @param compiled a folder of scripts compiled before, with which a writer is there sooner
 */
function writer(
  file: string,
  name: string,
  what: 'work' | 'tickets' | 'create' | 'migrate',
  maximumKb: number | 'unlimited' = 'unlimited',
  compiled?: string,
): Writer {
  const limited = ['-c', `trap '' XFSZ; ulimit -f ${maximumKb}; exec "$0" "$@"`, process.execPath];
  const [program, before] = maximumKb === 'unlimited' ? [process.execPath, []] : ['bash', limited];
  const child: ChildProcessByStdio<null, Readable, null> = spawn(
    program,
    [...before, script, file, name, what],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
      ...(compiled === undefined ? {} : { env: { ...process.env, NODE_COMPILE_CACHE: compiled } }),
    },
  );
  onTestFinished(() => void child.kill('SIGKILL'));
  let output = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (output += text));
  const said = async (line: string): Promise<void> => {
    while (!output.includes(line)) {
      if (child.exitCode !== null) throw new Error(`The writer ended by itself: ${output}`);
      await once(child.stdout, 'data');
    }
  };
  const kill = async (): Promise<readonly string[]> => {
    child.kill('SIGKILL');
    await once(child, 'close');
    expect(child.signalCode).toBe('SIGKILL');
    // A last line cut off in the middle was not said.
    return output.split('\n').slice(0, -1);
  };
  return { said, kill };
}

describe('A writer killed in the midst of work', () => {
  test('20 times: every acknowledged command is there, the rest whole or not at all, and the ledger balances', async () => {
    const seed = someSeed();
    console.info(`SEED=${seed}`);
    const throws = dice(seed);
    const file = path.join(aFolder(), 'a.regang');
    const book = await aYard(file);
    await done(book, (each) => each.appendMovements([openingFigure({ quantity: 100 })], now));
    await book.close();
    const acknowledged: string[] = [];
    let unacknowledgedKept = 0;
    for (let round = 0; round < 20; round += 1) {
      const context = `SEED=${seed}, round ${round}`;
      const killed = writer(file, `round${round}`, 'work');
      await killed.said(throws.chance(80) ? 'done' : 'started');
      await wait(throws.below(80));
      const said = await killed.kill();
      expect(
        said.filter((line) => line.startsWith('refused')),
        context,
      ).toEqual([]);
      acknowledged.push(...said.filter((line) => line.startsWith('done ')).map((line) => line.slice(5)));
      // Now and then the next writer comes at once, and finds the log as it was left.
      if (throws.chance(30)) continue;
      const after = await opened(file);
      expect(after.readOnly, context).toBe(false);
      expect(await after.read((reader) => reader.check()), context).toEqual([]);
      const movements = await after.read((reader) => reader.movements({ limit: 1_000_000 }));
      unacknowledgedKept = expectWholeCommands(movements, acknowledged, context);
      await after.close();
    }
    const last = await opened(file);
    const movements = await last.read((reader) => reader.movements({ limit: 1_000_000 }));
    unacknowledgedKept = expectWholeCommands(movements, acknowledged, `SEED=${seed}, at the end`);
    console.info(`${acknowledged.length} acknowledged, ${unacknowledgedKept} kept without`);
    expect(acknowledged.length).toBeGreaterThan(20);
    expect(unacknowledgedKept).toBeLessThanOrEqual(20);
  });

  test('leaves the writer’s place free at once; while it lives a second opening only reads', async () => {
    const file = path.join(aFolder(), 'a.regang');
    const book = await aYard(file);
    await done(book, (each) => each.appendMovements([openingFigure({ quantity: 100 })], now));
    await book.close();
    const other = writer(file, 'other', 'work');
    await other.said('done');
    const reader = await opened(file);
    expect(reader.readOnly).toBe(true);
    expect((await reader.read((each) => each.movements({ limit: 1 }))).length).toBe(1);
    await other.kill();
    await reader.close();
    expect((await opened(file)).readOnly).toBe(false);
  });
});

const lanes = 3;
const killsOfALane = 70;

test(
  `A writer of tickets of 40 lines killed ${lanes * killsOfALane} times in mid-booking: the book opens, its levels and balances hold, and every acknowledged movement is there`,
  { timeout: 300_000 },
  async () => {
    const seed = someSeed();
    console.info(`SEED=${seed}`);
    // Without a book it ends by itself, and leaves what it compiled.
    const compiled = aFolder();
    const env = { ...process.env, NODE_COMPILE_CACHE: compiled };
    const first = spawn(process.execPath, [script], { env, stdio: 'ignore' });
    await once(first, 'close');
    const books = await Promise.all(
      Array.from({ length: lanes }, (_, lane) =>
        killedAgainAndAgain(`lane${lane}`, dice(seed + lane), compiled),
      ),
    );
    const sum = (part: (one: LaneEnd) => number): number => books.reduce((all, one) => all + part(one), 0);
    const inTheMidst = sum((one) => one.inTheMidst);
    console.info(
      `${sum((one) => one.acknowledged)} tickets acknowledged; ${inTheMidst} of ${lanes * killsOfALane} kills in the ` +
        `midst of one, which was there nevertheless ${sum((one) => one.thereNevertheless)} times`,
    );
    expect(inTheMidst).toBeGreaterThanOrEqual(200);
  },
);

interface LaneEnd {
  readonly acknowledged: number;
  /** Kills when a ticket had been begun and was not yet acknowledged. */
  readonly inTheMidst: number;
  /** Of those, how many were on disk already. */
  readonly thereNevertheless: number;
}

async function killedAgainAndAgain(lane: string, throws: Dice, compiled: string): Promise<LaneEnd> {
  const file = path.join(aFolder(), 'a.regang');
  await (await aYard(file)).close();
  const acknowledged: string[] = [];
  let inTheMidst = 0;
  let thereNevertheless = 0;
  for (let round = 0; round < killsOfALane; round += 1) {
    const context = `SEED=${throws.seed}, ${lane}, round ${round}`;
    const killed = writer(file, `${lane}-${round}`, 'tickets', 'unlimited', compiled);
    await killed.said(throws.chance(60) ? 'done' : 'begin');
    await wait(throws.below(25));
    const said = await killed.kill();
    expect(
      said.filter((line) => line.startsWith('refused')),
      context,
    ).toEqual([]);
    acknowledged.push(...said.filter((line) => line.startsWith('done ')).map((line) => line.slice(5)));
    if (said.at(-1)?.startsWith('begin ') === true) inTheMidst += 1;
    // Every kill leaves a book for the next writer to open; every tenth is looked over as a whole.
    if (round % 10 !== 9 && round < killsOfALane - 1) continue;
    const book = await opened(file);
    expect(book.readOnly, context).toBe(false);
    expect(await book.read((reader) => reader.check()), context).toEqual([]);
    const booked = await book.read((reader) => reader.movements({ limit: 1_000_000 }));
    const lines = Map.groupBy(booked, ({ id }) => id.replace(/-\d+$/u, ''));
    expect(
      [...lines].filter(([, each]) => each.length !== ticketLines).map(([command]) => command),
      context,
    ).toEqual([]);
    expect(
      acknowledged.filter((command) => !lines.has(command)),
      context,
    ).toEqual([]);
    thereNevertheless = lines.size - acknowledged.length;
    await book.close();
  }
  return { acknowledged: acknowledged.length, inTheMidst, thereNevertheless };
}

/** Both movements of a command are there or none; of those acknowledged, both. Answers how many are there besides. */
function expectWholeCommands(
  movements: readonly BookedMovement[],
  acknowledged: readonly string[],
  context: string,
): number {
  const parts = new Map<string, number>();
  for (const { id } of movements.filter((each) => each.id.startsWith('round'))) {
    const command = id.replace(/-(first|second)$/u, '');
    parts.set(command, (parts.get(command) ?? 0) + 1);
  }
  expect(
    [...parts].filter(([, count]) => count !== 2),
    context,
  ).toEqual([]);
  expect(
    acknowledged.filter((command) => !parts.has(command)),
    context,
  ).toEqual([]);
  return parts.size - acknowledged.length;
}

test('A disk that takes no more: the command is refused and undone, what was acknowledged before is there', async () => {
  const file = path.join(aFolder(), 'a.regang');
  const book = await aYard(file);
  await done(book, (each) => each.appendMovements([openingFigure({ quantity: 100 })], now));
  await book.close();
  const full = writer(file, 'round0', 'work', 1024);
  await full.said('refused');
  const said = await full.kill();
  expect(said.at(-1)).toMatch(/^refused (disk-full|book-not-writable): /u);
  const acknowledged = said.filter((line) => line.startsWith('done ')).map((line) => line.slice(5));
  expect(acknowledged.length).toBeGreaterThan(5);
  const after = await opened(file);
  expect(await after.read((reader) => reader.check())).toEqual([]);
  const movements = await after.read((reader) => reader.movements({ limit: 1_000_000 }));
  expect(expectWholeCommands(movements, acknowledged, said.join('\n'))).toBe(0);
});

test('A process killed while it makes a new book leaves no book or a whole one, 8 times', async () => {
  const throws = dice(someSeed());
  const folder = aFolder();
  let whole = 0;
  for (let round = 0; round < 8; round += 1) {
    const context = `SEED=${throws.seed}, round ${round}`;
    const file = path.join(folder, `${round}.regang`);
    const killed = writer(file, 'maker', 'create');
    await killed.said('started');
    await wait(throws.below(60));
    await killed.kill();
    if (existsSync(file)) whole += 1;
    const book = await openBook(file, { mode: 'open-or-create', now });
    expect(book.ok && !book.value.readOnly, context).toBe(true);
    if (!book.ok) continue;
    expect(await book.value.read((reader) => reader.check()), context).toEqual([]);
    await book.value.close();
  }
  console.info(`${whole} of 8 were whole when their maker was killed`);
});

test('A process killed while it migrates leaves the old book or the new one whole, 6 times', async () => {
  const throws = dice(someSeed());
  const migrations = [...allMigrations, slowMigration];
  const oldVersion = slowMigration.number - 1;
  const versions: number[] = [];
  for (let round = 0; round < 6; round += 1) {
    const file = path.join(aFolder(), 'a.regang');
    await (await aYard(file)).close();
    const killed = writer(file, 'migrator', 'migrate');
    await killed.said('started');
    // The copy kept aside is the last thing before the migration, which takes some tenths of a second.
    while (!existsSync(`${file}.before-migration-${slowMigration.number}`)) await wait(1);
    await wait(throws.below(60) * round);
    await killed.kill();
    const asOld = await openBook(file, { mode: 'open', now });
    versions.push(asOld.ok ? oldVersion : slowMigration.number);
    if (!asOld.ok) expect(asOld.error.code).toBe('book-newer');
    if (asOld.ok) await asOld.value.close();
    const book = await opened(file, { migrations });
    const names = (await book.read((reader) => reader.components())).map((each) => each.name);
    expect(names, `SEED=${throws.seed}, round ${round}`).toEqual(['migrated', 'migrated']);
    expect(await book.read((reader) => reader.check())).toEqual([]);
    await book.close();
  }
  // Killed as soon as it began, the first at least must be undone.
  expect(versions).toContain(oldVersion);
  console.info(`versions found: ${versions.join(' ')}`);
});
