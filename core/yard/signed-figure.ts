// Three figures side by side: what the owner says is with us, what we say, and what was agreed. A signed figure is
// never changed; a later one stands below it.
export const figureSides = ['owner', 'ours', 'agreed'] as const;
export type FigureSide = (typeof figureSides)[number];

export interface SignedFigure {
  readonly number: number;
  readonly owner: string;
  readonly component: string;
  /** The date it speaks of, YYYY-MM-DD. */
  readonly asOf: string;
  readonly whose: FigureSide;
  readonly quantity: number;
  readonly signedBy: string;
  readonly paper: string | null;
  readonly remark: string | null;
  /** When it was entered. */
  readonly at: string;
}
