// What a table of cells is made of, whatever it is a table of.
import type { CellKind, Word } from './cell-kinds.ts';
import type { Problem } from './rules-draft.ts';

export interface GridColumn {
  readonly id: string;
  readonly header: string;
  /** Of numbers typed without one. */
  readonly unit?: string | undefined;
  readonly numeric?: boolean;
  /** Pixels, or a part of the table. */
  readonly width?: number | `${number}%`;
}

export interface GridCell {
  readonly text: string;
  /** Null where nothing can be written. */
  readonly kind: CellKind | null;
  /** What holds where nothing is written. */
  readonly otherwise?: string;
  /** What can be chosen, each with words about it; others may be typed unless `only`. */
  readonly offered?: { readonly words: readonly Word[]; readonly only: boolean };
  readonly problem?: Problem | undefined;
  /** What the book has, where that is something else. */
  readonly before?: string | undefined;
}

export interface GridRow {
  readonly key: string;
  /** Told with each of its cells. */
  readonly label: string;
  readonly cells: readonly GridCell[];
  readonly canGo?: boolean;
}
