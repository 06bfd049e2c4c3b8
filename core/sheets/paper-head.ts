// The head of a sheet of the yard: what it is, for what, its facts, and when and by whom it was printed.
import { of, printedHere, type SheetElement, type SheetNode } from './node.ts';

export interface PaperHead {
  readonly kind: string;
  readonly code: string;
  readonly name: string;
  readonly cells: readonly (readonly [label: string, value: SheetNode])[];
  readonly under: string;
}

export function paperHead({ kind, code, name, cells, under }: PaperHead): SheetElement {
  return of(
    'header',
    'sheet-head',
    of(
      'div',
      'sheet-name',
      of('span', 'sheet-kind', kind),
      of('h1', 'sheet-gang', of('span', 'sheet-code', code), ` ${name}`),
    ),
    of(
      'dl',
      'sheet-cells',
      ...[...cells, ['Printed', printedHere()] as const].map(([label, value]) =>
        of('div', 'sheet-cell', of('dt', 'cell-label', label), of('dd', 'cell-value', value)),
      ),
    ),
    of('p', 'superseded', under),
  );
}

/** By the clock of whoever entered it: "2026-03-02 07:00". */
export function clockWords(at: string | null, otherwise: string): string {
  return at === null ? otherwise : at.slice(0, 16).replace('T', ' ');
}
