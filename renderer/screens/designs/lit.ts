// What is pointed at: a line of the take-off, a piece on the drawing or a finding. It lights the others.
import type { Mark } from './elevation-marks.ts';
import { marksOfLine } from './elevation-marks.ts';

export type Pointed =
  | { readonly kind: 'line'; readonly component: string }
  | { readonly kind: 'mark'; readonly id: string }
  | { readonly kind: 'finding'; readonly number: number };

export interface Lit {
  /** Marks to light; null where nothing is pointed at and all look the same. */
  readonly marks: ReadonlySet<string> | null;
  readonly lines: ReadonlySet<string>;
  readonly finding: number | null;
}

const unlit: Lit = { marks: null, lines: new Set(), finding: null };

export function litBy(pointed: Pointed | null, marks: readonly Mark[]): Lit {
  if (pointed === null) return unlit;
  switch (pointed.kind) {
    case 'line': {
      const those = marksOfLine(marks, pointed.component);
      // A line without a place on the drawing, as brackets have, dims nothing.
      return { marks: those.size === 0 ? null : those, lines: new Set([pointed.component]), finding: null };
    }
    case 'mark': {
      const mark = marks.find(({ id }) => id === pointed.id);
      return { marks: new Set([pointed.id]), lines: new Set(mark?.lines), finding: null };
    }
    case 'finding':
      return { marks: null, lines: new Set(), finding: pointed.number };
    default:
      return unlit;
  }
}
