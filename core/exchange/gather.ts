// Rows that each define one thing by its code. The same code with different facts stops the import, and so
// does a code that only differs from another by spaces, dashes or case: somebody has to say which is meant.
import type { BadCell } from './bad.ts';
import { codeSign } from './nearest.ts';
import type { Row, Skipped } from './table.ts';

/** What a file holds, and what is wrong with it; the values are only of use where nothing is. */
export interface Parsed<T> {
  readonly values: readonly T[];
  /** Rows with content, bad ones included. */
  readonly rows: number;
  readonly skipped: Skipped;
  readonly bad: readonly BadCell[];
}

/**
 * @param known codes that are in the book already: these may be given again, with new facts
 * @param readRow answers the thing of a row, undefined where something was refused
 */
export function gatherByCode<Name extends string, T extends { readonly code: string }>(
  rows: readonly Row<Name>[],
  column: Name,
  known: Iterable<string>,
  readRow: (row: Row<Name>) => T | undefined,
): { readonly values: readonly T[]; readonly lines: ReadonlyMap<string, Row<Name>> } {
  const signs = new Map<string, string>();
  for (const code of known) signs.set(codeSign(code), code);
  const knownCodes = new Set(signs.values());
  const values = new Map<string, { readonly value: T; readonly facts: string }>();
  const lines = new Map<string, Row<Name>>();
  for (const row of rows) {
    const value = readRow(row);
    if (value === undefined || row.isBad()) continue;
    const alike = signs.get(codeSign(value.code));
    const earlier = values.get(value.code);
    const facts = JSON.stringify(value);
    if (earlier !== undefined) {
      if (earlier.facts !== facts)
        row.refuse(
          column,
          `${value.code} once: line ${lines.get(value.code)?.line} says something else of it`,
        );
      continue;
    }
    if (alike !== undefined && alike !== value.code && !knownCodes.has(value.code)) {
      row.refuse(
        column,
        `a code that differs from ${alike} by more than spaces, marks or case. Maybe ${alike} is meant`,
      );
      continue;
    }
    signs.set(codeSign(value.code), value.code);
    values.set(value.code, { value, facts });
    lines.set(value.code, row);
  }
  return { values: [...values.values()].map((entry) => entry.value), lines };
}
