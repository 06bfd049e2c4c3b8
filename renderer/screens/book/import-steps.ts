// The kinds of files in the order in which they build on each other, and which kind a file is by its name.
import type { importKinds } from '../../../core/procedures/import-file.ts';

export type ImportKind = (typeof importKinds)[number];

export interface ImportStep {
  readonly kind: ImportKind;
  readonly name: string;
  readonly holds: string;
}

export const importSteps: readonly ImportStep[] = [
  { kind: 'components', name: 'Components', holds: 'codes, names, weights and sizes of the pieces' },
  { kind: 'rules', name: 'Rule tables', holds: 'how panel sizes turn into locks, rails, hooks, brackets' },
  { kind: 'places', name: 'Places and owners', holds: 'yards, sites, suppliers and their agreements' },
  { kind: 'jobs', name: 'Jobs', holds: 'crew, shifts, days off, rates' },
  { kind: 'stock', name: 'Opening stock', holds: 'how many of what, where, whose, counted or estimated' },
  { kind: 'designs', name: 'Gang designs', holds: 'where every panel of a gang stands' },
  {
    kind: 'pours',
    name: 'Pours',
    holds: 'sides with their gangs and set dates, finish, gates, loose pieces',
  },
  { kind: 'cranes', name: 'Cranes', holds: 'charts, what always hangs on them, wind limits' },
  { kind: 'trucks', name: 'Trucks', holds: 'payload, deck, how high they may be stacked' },
  { kind: 'notes', name: 'Notes', holds: 'deliveries and returns with their paper, booked or due' },
];

/** The kind whose word stands in a file's name; the first kind not chosen yet where none does. */
export function guessKind(fileName: string, taken: readonly ImportKind[]): ImportKind {
  const name = fileName.toLowerCase();
  const words: readonly (readonly [ImportKind, RegExp])[] = [
    ['components', /component|catalog/u],
    ['rules', /rule/u],
    ['places', /place|location|owner|yard/u],
    ['stock', /stock|inventor|opening/u],
    ['designs', /design|gang/u],
    ['jobs', /job|project/u],
    ['pours', /pour|schedule|sequence/u],
    ['cranes', /crane|chart/u],
    ['trucks', /truck|trailer/u],
    ['notes', /note|deliver|return/u],
  ];
  const found = words.find(([, pattern]) => pattern.test(name))?.[0];
  return found ?? importSteps.find((step) => !taken.includes(step.kind))?.kind ?? 'pours';
}

export function orderOf(kind: ImportKind): number {
  return importSteps.findIndex((step) => step.kind === kind);
}
