// Writes to a book until it is killed, and says on standard output what was acknowledged: one line each,
// written at once. `node writer-process.ts FILE NAME work|tickets|create|migrate`.
import { writeSync } from 'node:fs';
import { newestVersion } from '../../core/book/migrate.ts';
import type { Migration } from '../../core/book/migration.ts';
import { openBook } from '../../core/book/open.ts';
import type { OpenBook } from '../../core/book/open.ts';
import type { Movement } from '../../core/yard/movement.ts';
import { allMigrations } from '../../migrations/all.ts';

const now = '2026-03-02T07:00:00-05:00';

/** Slow enough to be killed in: two tables filled, and every component renamed. */
export const slowMigration: Migration = {
  number: newestVersion(allMigrations) + 1,
  name: 'slow',
  sql: `
    CREATE TABLE slow (n INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT;
    WITH RECURSIVE count (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM count WHERE n < 150000)
    INSERT INTO slow SELECT n, 'row ' || n FROM count;
    UPDATE component SET name = 'migrated';
    CREATE TABLE slow_too AS SELECT * FROM slow;`,
};

export function movementOf(id: string, from: string, to: string): Movement {
  return {
    id,
    component: 'P1',
    quantity: 3,
    owner: 'OURS',
    from,
    to,
    condition: 'ready',
    conditionAfter: 'ready',
    reason: 'transfer',
    at: now,
    who: 'writer',
    noteNumber: null,
    remark: 'x'.repeat(300),
    basis: null,
    basisDate: null,
    reverses: null,
    paper: null,
  };
}

const say = (line: string): void => void writeSync(1, `${line}\n`);

async function work(book: OpenBook, name: string): Promise<void> {
  for (let count = 0; ; count += 1) {
    const commandId = `${name}-${count}`;
    const [from, to] = count % 2 === 0 ? ['NORTH', 'SITE'] : ['SITE', 'NORTH'];
    const done = await book.command({ commandId, name: 'work', at: now, who: 'writer' }, async (writer) => {
      await writer.appendMovements([movementOf(`${commandId}-first`, from, to)], now);
      await writer.appendMovements([movementOf(`${commandId}-second`, 'HIRE', 'NORTH')], now);
      return { ok: true, value: null };
    });
    say(done.ok ? `done ${commandId}` : `refused ${done.error.code}: ${done.error.message}`);
    if (!done.ok) return;
  }
}

/** So many movements in one command, over as many days: each lifts levels of its own day and of all after it. */
export const ticketLines = 40;

/** A delivery of every line on a day of its own, most of it stripped or sent on the same day. */
export function ticketOf(commandId: string): readonly Movement[] {
  return Array.from({ length: ticketLines }, (_, index) => {
    const isOn = index % 2 === 1;
    const day = String(1 + ((index >> 1) % 28)).padStart(2, '0');
    const of = { component: index % 4 < 2 ? 'P1' : 'P2', owner: index % 8 < 4 ? 'OURS' : 'H1' };
    return {
      ...movementOf(`${commandId}-${index}`, isOn ? 'NORTH' : 'HIRE', isOn ? 'SITE' : 'NORTH'),
      ...of,
      quantity: isOn ? 2 : 3,
      conditionAfter: isOn && index % 3 === 0 ? 'to-clean' : 'ready',
      at: `2026-02-${day}T${isOn ? '13' : '07'}:00:00-05:00`,
      remark: null,
    };
  });
}

async function tickets(book: OpenBook, name: string): Promise<void> {
  for (let count = 0; ; count += 1) {
    const commandId = `${name}-${count}`;
    say(`begin ${commandId}`);
    const done = await book.command(
      { commandId, name: 'tickets', at: now, who: 'writer' },
      async (writer) => {
        await writer.appendMovements(ticketOf(commandId), now);
        return { ok: true, value: null };
      },
    );
    say(done.ok ? `done ${commandId}` : `refused ${done.error.code}: ${done.error.message}`);
    if (!done.ok) return;
  }
}

async function main(file: string, name: string, what: string): Promise<void> {
  say('started');
  const migrations = what === 'migrate' ? [...allMigrations, slowMigration] : allMigrations;
  const opened = await openBook(file, { mode: what === 'create' ? 'create' : 'open', now, migrations });
  if (!opened.ok) say(`refused ${opened.error.message}`);
  else say(opened.value.readOnly ? 'refused: reads only' : 'open');
  if (opened.ok && what === 'work') await work(opened.value, name);
  if (opened.ok && what === 'tickets') await tickets(opened.value, name);
  // Kept alive to be killed.
  setInterval(() => undefined, 1000);
}

const [file, name, what] = process.argv.slice(2);
if (import.meta.main && file !== undefined && name !== undefined && what !== undefined)
  await main(file, name, what);
