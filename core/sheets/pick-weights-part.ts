// What hangs on the crane, line by line, and where each figure is from.
import type { WeightLine } from '../pick/pick-weights.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { el, of, type SheetElement } from './node.ts';
import { row } from './pieces-part.ts';

const basisWords: Readonly<Record<WeightLine['basis'], string>> = {
  catalogue: 'catalogue',
  entered: 'entered',
  allowance: 'allowance',
  'not-entered': '',
};

export interface PickSums {
  readonly onHooksGrams: number;
  readonly onCraneGrams: number;
}

/** `gangGrams` is the gang without its hooks; `sums` are known where a pick is entered. */
export function pickWeightsPart(
  lines: readonly WeightLine[],
  gangGrams: number,
  sums: PickSums | null,
  units: SheetUnits,
): SheetElement {
  const sumRows = [
    ['the gang without its hooks', gangGrams],
    ...(sums === null
      ? []
      : ([
          ['on the hooks', sums.onHooksGrams],
          ['on the crane', sums.onCraneGrams],
        ] as const)),
  ] as const;
  return of(
    'section',
    'part weights',
    of('h2', 'part-name', 'Weight, line by line'),
    of(
      'table',
      'lines weight-lines',
      el('thead', {}, row('th', ['part', 'name', 'pieces', 'weight', 'basis'])),
      el(
        'tbody',
        {},
        ...lines.map((line) =>
          row('td', [
            groupWords[line.group],
            line.component === null ? line.name : `${line.component} ${line.name}`,
            line.quantity === null ? '' : String(line.quantity),
            isMissing(line) ? '' : units.weight(line.weightGrams),
            isMissing(line) ? of('strong', 'missing', 'NOT ENTERED') : basisWords[line.basis],
          ]),
        ),
      ),
      el('tfoot', {}, ...sumRows.map(([name, grams]) => row('td', ['', name, '', units.weight(grams), '']))),
    ),
  );
}

/** An allowance of nothing is none. */
function isMissing({ basis, weightGrams }: WeightLine): boolean {
  return basis === 'not-entered' || (basis === 'allowance' && weightGrams === 0);
}

const groupWords: Readonly<Record<WeightLine['group'], string>> = {
  panels: 'panels',
  hardware: 'hardware',
  platform: 'platform',
  timber: 'timber',
  concrete: 'concrete',
  hooks: 'hooks',
  slings: 'rigging',
  gear: 'rigging',
  crane: 'crane',
};
