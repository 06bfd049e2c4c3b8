// A column formed by two halves of an L. Half 1 covers face A and face B, seen from the back from left to right; half 2
// goes on round the column with the two faces opposite, so it is half 1 turned half round.
import type { Component } from '../catalogue/component.ts';
import type { DesignGeometry } from '../gang/design.ts';
import type { CornerStack } from './wall-corners.ts';
import type { Column, WallTask } from './wall.ts';

export interface ColumnTask extends Omit<WallTask, 'wall'> {
  readonly column: Column;
}

/** What a half has to cover. */
export interface ColumnForm {
  readonly rowsNm: readonly number[];
  readonly formNm: number;
  /** Panels of each face, between the legs of the corner pieces. */
  readonly panelsNm: Readonly<Record<FaceName, number>>;
  readonly corner: CornerStack;
}

export type FaceName = 'A' | 'B';
export const faceNames: readonly FaceName[] = ['A', 'B'];

/** A half drawn unfolded: its first face ends and its second one begins at the fold. */
export interface ColumnHalf {
  readonly geometry: DesignGeometry;
  /** The one at the left of the fold. */
  readonly first: FaceName;
  readonly foldNm: number;
  /** Code of the gang on paper that it is. */
  readonly known: string | null;
}

/** Half 1 and half 2; often one and the same. */
export type ColumnHalves = readonly [ColumnHalf, ColumnHalf];

export function cornerGrams(pieces: readonly Component[]): number {
  return pieces.reduce((sum, { weightGrams }) => sum + weightGrams, 0);
}
