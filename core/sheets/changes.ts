// What on a sheet is not as it was when it was last printed: line by line, by a key that stays the same.

export interface SheetLine {
  readonly key: string;
  readonly text: string;
}

export interface PrintedBefore {
  readonly revision: number;
  /** In the job's time zone. */
  readonly at: string;
  readonly given: readonly string[];
  readonly lines: readonly SheetLine[];
}

export interface SheetChanges {
  /** By key what stood there before; null where the line is new. */
  readonly changed: ReadonlyMap<string, string | null>;
  /** Lines that stood there and do not any more. */
  readonly gone: readonly SheetLine[];
}

const nothing: SheetChanges = { changed: new Map(), gone: [] };

/** Against nothing printed before nothing has changed. */
export function changesSince(lines: readonly SheetLine[], before: PrintedBefore | null): SheetChanges {
  if (before === null) return nothing;
  const was = new Map(before.lines.map(({ key, text }) => [key, text]));
  const now = new Set(lines.map(({ key }) => key));
  return {
    changed: new Map(
      lines.flatMap(({ key, text }) => (was.get(key) === text ? [] : [[key, was.get(key) ?? null] as const])),
    ),
    gone: before.lines.filter(({ key }) => !now.has(key)),
  };
}

export interface PrintState {
  /** The number that this printing bears. */
  readonly revision: number;
  /** The printing that it is held against. */
  readonly before: PrintedBefore | null;
  /** Who has got this very revision already. */
  readonly given: readonly string[];
}

/**
 * A sheet with a changed line is a new revision; printed once more as it was it keeps its number, and is held against
 * the revision before that.
 * @param prints of the same kind, oldest first
 */
export function printState(lines: readonly SheetLine[], prints: readonly PrintedBefore[]): PrintState {
  const last = prints.at(-1) ?? null;
  if (last === null) return { revision: 1, before: null, given: [] };
  const { changed, gone } = changesSince(lines, last);
  if (changed.size > 0 || gone.length > 0) return { revision: last.revision + 1, before: last, given: [] };
  const same = prints.filter(({ revision }) => revision === last.revision);
  return {
    revision: last.revision,
    before: prints.findLast(({ revision }) => revision < last.revision) ?? null,
    given: [...new Set(same.flatMap(({ given }) => given))],
  };
}
