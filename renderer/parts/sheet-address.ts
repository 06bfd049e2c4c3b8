// The addresses of sheets, and what a sheet is called.
import { isPaperSheet, paperSheets } from './paper-sheets.ts';

export type SheetKind = 'assembly' | 'pick';

export const sheetKinds: readonly SheetKind[] = ['assembly', 'pick'];

const names: Readonly<Record<SheetKind, string>> = { assembly: 'Assembly sheet', pick: 'Pick sheet' };

export function sheetName(kind: SheetKind): string {
  return names[kind];
}

/** Shown at a pour where one is named, else at the first at which the gang is planned to stand. */
export function sheetAddress(kind: SheetKind, design: string, pour?: string): string {
  const address = `/sheets/${kind}/${encodeURIComponent(design)}`;
  return pour === undefined ? address : `${address}?pour=${encodeURIComponent(pour)}`;
}

/** "Assembly sheet GA" for the address of a sheet, else undefined. */
export function sheetNameAt(path: string): string | undefined {
  const [, kind, design] = /^\/sheets\/([a-z]+)\/([^/]+)$/u.exec(path) ?? [];
  if (kind === undefined) return undefined;
  if (isPaperSheet(kind)) return paperSheets[kind].name;
  if (kind !== 'assembly' && kind !== 'pick') return undefined;
  return `${names[kind]} ${decodeURIComponent(design ?? '')}`;
}
