// Every migration in order. A list and not a look into the folder, so that a bundled app needs no files;
// a test compares it with the folder.
import type { Migration } from '../core/book/migration.ts';
import { firstTables } from './0001-first-tables.ts';
import { revisionsAndPicks } from './0002-revisions-and-picks.ts';
import { yardLedger } from './0003-yard-ledger.ts';
import { yardPapers } from './0004-yard-papers.ts';
import { planning } from './0005-planning.ts';

export const allMigrations: readonly Migration[] = [
  firstTables,
  revisionsAndPicks,
  yardLedger,
  yardPapers,
  planning,
];
