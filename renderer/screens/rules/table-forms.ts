// The form of a rule table on screen: which numbers it has, under which words, and where each stands in the
// rules. Places are named as the core names them in refusals and sources: locks.bands[1].upTo.
import type { ComponentKind } from '../../../core/catalogue/component.ts';
import type { RuleName } from '../../../core/catalogue/rules.ts';
import type { CellKind, Word } from './cell-kinds.ts';

export interface FieldForm {
  readonly place: string;
  /** Where its value stands in the rules, in internal units. */
  readonly path: readonly string[];
  readonly words: string;
  /** Fields of one group stand together under these words; '' for those at the head. */
  readonly group: string;
  readonly kind: CellKind;
  /** A table without it is refused. `part` needs it only where something of that part is given. */
  readonly needed: boolean | { readonly part: string };
  /** What holds where it is empty. */
  readonly otherwise: string;
  /** Numbers carry a source, words and codes do not. */
  readonly sourced: boolean;
  /** Kinds of component that can do this work. */
  readonly kinds?: readonly ComponentKind[];
}

export interface ColumnForm {
  /** In the rules. */
  readonly key: string;
  /** In a place. */
  readonly name: string;
  readonly words: string;
  readonly kind: CellKind;
}

export interface RowsForm {
  readonly place: string;
  readonly path: readonly string[];
  readonly words: string;
  readonly about: string;
  readonly columns: readonly ColumnForm[];
  /** May it have no rows at all? */
  readonly optional: boolean;
}

export interface TableForm {
  readonly name: RuleName;
  readonly words: string;
  /** What the table does, in a sentence. */
  readonly about: string;
  readonly fields: readonly FieldForm[];
  readonly rows: readonly RowsForm[];
}

interface More {
  readonly needed?: boolean | { readonly part: string };
  readonly otherwise?: string;
  /** The name in a place where it is not that of the key less its unit. */
  readonly name?: string;
  readonly group?: string;
}

/** Keys carry their unit, places do not: minimumStretchNm is locks.minimumStretch. */
function placeOf(table: string, key: string, name?: string): string {
  return `${table}.${name ?? key.replace(/Nm$/u, '')}`;
}

function field(table: string, key: string, words: string, kind: CellKind, more: More = {}): FieldForm {
  return {
    place: placeOf(table, key, more.name),
    path: [table, ...key.split('.')],
    words,
    group: more.group ?? '',
    kind,
    needed: more.needed ?? false,
    otherwise: more.otherwise ?? '',
    sourced: !['code', 'word', 'words', 'yes-no'].includes(kind.as),
  };
}

/** Makes fields of one table, each in a line: its key, its words, and what holds where it is empty. */
export function fieldsOf(table: RuleName) {
  return {
    code: (key: string, words: string, kinds: readonly ComponentKind[], more?: More): FieldForm => ({
      ...field(table, key, words, { as: 'code' }, more),
      kinds,
    }),
    number: (
      key: string,
      words: string,
      as: 'length' | 'weight' | 'whole' | 'decimal',
      more?: More,
    ): FieldForm => field(table, key, words, { as }, more),
    yesNo: (key: string, words: string, more?: More): FieldForm =>
      field(table, key, words, { as: 'yes-no' }, more),
    word: (key: string, words: string, options: readonly Word[], more?: More): FieldForm =>
      field(table, key, words, { as: 'word', options }, more),
    words: (key: string, words: string, options: readonly Word[], more?: More): FieldForm =>
      field(table, key, words, { as: 'words', options }, more),
  };
}
