// The head of a sheet, as the title block of a drawing: which gang in which revision, by which rules, for which
// job, and when and by whom it was printed.
import { of, printedHere, type SheetElement, type SheetNode } from './node.ts';

export interface SheetGangName {
  readonly code: string;
  readonly name: string;
  readonly revision: string;
  readonly hand: 'left' | 'right' | 'symmetrical';
  readonly systemName: string;
  readonly ruleVersion: number;
  /** The state of the design that is printed, and its saving where that is known. */
  readonly state: { readonly number: number; readonly savedAt: string | null; readonly who: string | null };
}

export interface SheetJob {
  readonly code: string;
  readonly name: string;
}

const handWords: Readonly<Record<SheetGangName['hand'], string>> = {
  left: 'left: not for a right one',
  right: 'right: not for a left one',
  symmetrical: 'either',
};

export function titlePart(
  kind: string,
  gang: SheetGangName,
  job: SheetJob | null,
  more: readonly (readonly [label: string, value: string])[],
): SheetElement {
  const cells: readonly (readonly [string, SheetNode])[] = [
    ['Job', job === null ? 'none named' : `${job.code} ${job.name}`],
    ['Revision', gang.revision === '' ? 'none' : gang.revision],
    ['Hand', handWords[gang.hand]],
    ['Panel system', gang.systemName],
    ['Rule tables', `version ${gang.ruleVersion}`],
    ...more,
    ['Printed', printedHere()],
  ];
  return of(
    'header',
    'sheet-head',
    of(
      'div',
      'sheet-name',
      of('span', 'sheet-kind', kind),
      of('h1', 'sheet-gang', of('span', 'sheet-code', gang.code), ` ${gang.name}`),
    ),
    of(
      'dl',
      'sheet-cells',
      ...cells.map(([label, value]) =>
        of('div', 'sheet-cell', of('dt', 'cell-label', label), of('dd', 'cell-value', value)),
      ),
    ),
    of('p', 'superseded', `Superseded once a newer revision exists. ${stateWords(gang.state)}`),
  );
}

/** By the clock of whoever saved it. */
function stateWords({ number, savedAt, who }: SheetGangName['state']): string {
  const saved =
    savedAt === null || who === null ? '' : `, saved ${savedAt.slice(0, 16).replace('T', ' ')} by ${who}`;
  return `This is state ${number} of the design${saved}.`;
}

/** "Assembly sheet GA revision B · J1 Pier" */
export function footOf(kind: string, gang: SheetGangName, job: SheetJob | null): string {
  const revision = gang.revision === '' ? '' : ` revision ${gang.revision}`;
  return `${kind} ${gang.code}${revision}${job === null ? '' : ` · ${job.code} ${job.name}`}`;
}
