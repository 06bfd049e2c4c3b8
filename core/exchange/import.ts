// Takes one file into the book: reads it against what the book knows, and writes only where nothing at all
// is wrong. Reading decides, writing only does: so a refused file leaves the book as it was.
import { never } from '../answer.ts';
import type { BookReader, BookWriter } from '../book/book.ts';
import type { BadCell } from './bad.ts';
import { readCranes } from './cranes-csv.ts';
import { importComponents } from './import-components.ts';
import { importDesigns } from './import-designs.ts';
import { importNotes } from './import-notes.ts';
import { importPours } from './import-pours.ts';
import { importStock } from './import-stock.ts';
import { readJobs } from './jobs-csv.ts';
import { counted, type ImportContext, type ImportInput, type ImportKind, type Prepared } from './prepared.ts';
import { readPlaces } from './places-csv.ts';
import { readRules } from './rules-csv.ts';
import { readTrucks } from './trucks-csv.ts';
import { catalogueOf } from '../book/systems.ts';
import type { Skipped } from './table.ts';

export interface ImportOutcome {
  readonly kind: ImportKind;
  /** Rows with content, and what was added to the book or changed in it: rows, or designs of several rows. */
  readonly rows: number;
  readonly added: number;
  readonly changed: number;
  readonly stored: boolean;
  readonly skipped: Skipped;
  readonly bad: readonly BadCell[];
}

export async function importInto(
  book: BookWriter,
  input: ImportInput,
  context: ImportContext,
): Promise<ImportOutcome> {
  const { parsed, added, changed, store } = await prepare(book, input, context);
  const { rows, skipped } = parsed;
  const bad = [...parsed.bad].sort((one, other) => one.line - other.line);
  const good = bad.length === 0;
  const stored = good && !input.dryRun;
  if (stored) await store(book);
  return {
    kind: input.kind,
    rows,
    added: good ? added : 0,
    changed: good ? changed : 0,
    stored,
    skipped,
    bad,
  };
}

function prepare(book: BookReader, input: ImportInput, context: ImportContext): Promise<Prepared> {
  switch (input.kind) {
    case 'components':
      return importComponents(book, input);
    case 'rules':
      return importRules(book, input);
    case 'places':
      return importPlaces(book, input);
    case 'stock':
      return importStock(book, input, context);
    case 'designs':
      return importDesigns(book, input);
    case 'jobs':
      return importJobs(book, input);
    case 'pours':
      return importPours(book, input);
    case 'cranes':
      return importCranes(book, input);
    case 'trucks':
      return importTrucks(book, input);
    case 'notes':
      return importNotes(book, input, context);
    default:
      return never(input.kind);
  }
}

async function importRules(book: BookReader, { text, columns = {} }: ImportInput): Promise<Prepared> {
  const [components, versions] = await Promise.all([book.components(), book.ruleVersions()]);
  const parsed = readRules(text, columns, (system) => catalogueOf(components, system));
  const known = new Set(versions.map((version) => version.system));
  return {
    parsed,
    ...counted(
      parsed.values.map((one) => one.system),
      known,
    ),
    store: async (writer) => {
      for (const { system, systemName, rules } of parsed.values)
        await writer.putRules(system, systemName, rules);
    },
  };
}

async function importPlaces(book: BookReader, { text, columns = {} }: ImportInput): Promise<Prepared> {
  const [locations, owners] = await Promise.all([book.locations(), book.owners()]);
  const known = { locations: locations.map((one) => one.code), owners: owners.map((one) => one.code) };
  const parsed = readPlaces(text, columns, known);
  const keys = new Set([
    ...known.locations.map((code) => `location ${code}`),
    ...known.owners.map((code) => `owner ${code}`),
  ]);
  return {
    parsed,
    ...counted(
      parsed.values.map(({ what, code }) => `${what} ${code}`),
      keys,
    ),
    store: async (writer) => {
      for (const { what: _what, ...place } of parsed.values)
        await ('agreement' in place ? writer.putOwner(place) : writer.putLocation(place));
    },
  };
}

async function importJobs(book: BookReader, { text, columns = {} }: ImportInput): Promise<Prepared> {
  const known = new Set((await book.jobs()).map((job) => job.code));
  const parsed = readJobs(text, columns, known);
  return {
    parsed,
    ...counted(
      parsed.values.map((job) => job.code),
      known,
    ),
    store: async (writer) => {
      for (const job of parsed.values) await writer.putJob(job);
    },
  };
}

async function importCranes(book: BookReader, { text, columns = {} }: ImportInput): Promise<Prepared> {
  const known = new Set((await book.cranes()).map((crane) => crane.code));
  const parsed = readCranes(text, columns, known);
  return {
    parsed,
    ...counted(
      parsed.values.map((crane) => crane.code),
      known,
    ),
    store: async (writer) => {
      for (const crane of parsed.values) await writer.putCrane(crane);
    },
  };
}

async function importTrucks(book: BookReader, { text, columns = {} }: ImportInput): Promise<Prepared> {
  const known = new Set((await book.trucks()).map((truck) => truck.code));
  const parsed = readTrucks(text, columns, known);
  return {
    parsed,
    ...counted(
      parsed.values.map((truck) => truck.code),
      known,
    ),
    store: async (writer) => {
      for (const truck of parsed.values) await writer.putTruck(truck);
    },
  };
}
