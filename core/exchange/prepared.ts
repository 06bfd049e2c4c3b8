// What reading a file against the book comes to, before anything is written.
import type { BookWriter } from '../book/book.ts';
import type { Parsed } from './gather.ts';

export const importKinds = [
  'components',
  'rules',
  'places',
  'stock',
  'designs',
  'jobs',
  'pours',
  'cranes',
  'trucks',
  'notes',
] as const;
export type ImportKind = (typeof importKinds)[number];

export interface ImportInput {
  readonly commandId: string;
  readonly kind: ImportKind;
  readonly text: string;
  readonly job?: string | undefined;
  readonly columns?: Readonly<Record<string, string>> | undefined;
  readonly dryRun: boolean;
}

export interface ImportContext {
  readonly at: string;
  readonly who: string;
}

/** A file as read against the book, and how it would be written. */
export interface Prepared {
  readonly parsed: Parsed<unknown>;
  readonly added: number;
  readonly changed: number;
  readonly store: (book: BookWriter) => Promise<void>;
}

/** How many of the keys are new, and how many replace what is there. */
export function counted(
  keys: readonly string[],
  known: ReadonlySet<string>,
): { readonly added: number; readonly changed: number } {
  const changed = keys.filter((key) => known.has(key)).length;
  return { added: keys.length - changed, changed };
}
