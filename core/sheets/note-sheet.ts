// The paper that goes with a delivery, a return, a transfer or an issue: what the other end says, what was counted,
// both signatures, and what was written under protest. A draft prints with empty boxes to count into.
import type { UnitSystem } from '../units/length.ts';
import { handLines } from './by-hand.ts';
import { cautionsPart, noteCautions } from './cautions.ts';
import { sheetUnits, type SheetUnits } from './drawn-gang.ts';
import { el, of, printedHere, type Sheet, type SheetElement, type SheetNode } from './node.ts';
import { row } from './pieces-part.ts';

const conditionWords = {
  ready: 'ready',
  'ready-hidden': 'ready, hidden faces only',
  'to-clean': 'to clean',
  'to-repair': 'to repair',
  quarantine: 'quarantine',
  scrapped: 'scrapped',
} as const;

export interface NoteSheetLine {
  readonly component: string;
  readonly name: string;
  readonly owner: string;
  readonly condition: keyof typeof conditionWords;
  readonly sent: number;
  readonly counted: number | null;
  readonly countedThere: number | null;
  readonly container: string | null;
  readonly remark: string | null;
  readonly weightGrams: number;
}

export interface NoteSheetFacts {
  readonly kind: string;
  readonly number: string;
  readonly state: string;
  readonly isComing: boolean;
  readonly from: string;
  readonly to: string;
  readonly job: string | null;
  readonly expectedAt: string | null;
  readonly arrivedAt: string | null;
  readonly leftAt: string | null;
  readonly vehicle: string | null;
  readonly signedHere: string | null;
  readonly signedThere: string | null;
  readonly protest: string | null;
  readonly remark: string | null;
  /** Heaviest first is not wanted here: in the order of the paper. */
  readonly lines: readonly NoteSheetLine[];
  readonly claims: readonly string[];
  readonly units: UnitSystem;
}

export function noteSheet(facts: NoteSheetFacts): Sheet {
  const units = sheetUnits(facts.units);
  const tree = of(
    'article',
    `sheet sheet-${facts.units}`,
    head(facts),
    linesPart(facts, units),
    ...claimsPart(facts),
    signaturesPart(facts),
    cautionsPart(noteCautions),
  );
  const title = `${facts.kind} ${facts.number}`;
  return { title, foot: `${title} · ${facts.from} to ${facts.to}`, tree };
}

function head(facts: NoteSheetFacts): SheetElement {
  const cells: readonly (readonly [string, SheetNode])[] = [
    ['From', facts.from],
    ['To', facts.to],
    ['Job', facts.job ?? 'none named'],
    ['Vehicle', facts.vehicle ?? blank],
    ['Due', moment(facts.expectedAt)],
    ['Arrived', moment(facts.arrivedAt)],
    ['Left', moment(facts.leftAt)],
    ['State', facts.state],
    ['Printed', printedHere()],
  ];
  return of(
    'header',
    'sheet-head',
    of(
      'div',
      'sheet-name',
      of('span', 'sheet-kind', facts.kind),
      of('h1', 'sheet-gang', of('span', 'sheet-code', facts.number)),
    ),
    of(
      'dl',
      'sheet-cells',
      ...cells.map(([label, value]) =>
        of('div', 'sheet-cell', of('dt', 'cell-label', label), of('dd', 'cell-value', value)),
      ),
    ),
    ...(facts.remark === null ? [] : [of('p', 'superseded', facts.remark)]),
  );
}

const blank = '…………';

/** By the clock of the job. */
function moment(at: string | null): string {
  return at === null ? blank : at.slice(0, 16).replace('T', ' ');
}

function linesPart(facts: NoteSheetFacts, units: SheetUnits): SheetElement {
  const told = facts.lines.some((line) => line.countedThere !== null);
  const other = facts.isComing ? 'sent' : 'to go';
  const ours = facts.isComing ? 'received' : 'loaded';
  const heads = [
    other,
    ours,
    ...(told ? ['depot counted'] : []),
    'component',
    '',
    'owner',
    'condition',
    'in',
    'weight',
    'remark',
  ];
  const grams = facts.lines.reduce((sum, line) => sum + moving(line) * line.weightGrams, 0);
  const pieces = facts.lines.reduce((sum, line) => sum + moving(line), 0);
  return of(
    'section',
    'part note-lines',
    of('h2', 'part-name', 'Pieces'),
    of(
      'table',
      'lines note-table',
      el('thead', {}, row('th', heads)),
      el(
        'tbody',
        {},
        ...facts.lines.map((line) =>
          row('td', [
            String(line.sent),
            line.counted === null ? box() : String(line.counted),
            ...(told ? [line.countedThere === null ? '' : String(line.countedThere)] : []),
            line.component,
            line.name,
            line.owner,
            conditionWords[line.condition],
            line.container ?? '',
            units.weight(moving(line) * line.weightGrams),
            line.remark ?? '',
          ]),
        ),
      ),
    ),
    of(
      'p',
      'soft',
      `${pieces} pieces, ${units.weight(grams)} by the catalogue’s weights; racks, bins and what clings to the pieces are not in it.`,
    ),
  );
}

/** As counted, or while nobody has, as the paper says. */
function moving(line: NoteSheetLine): number {
  return line.counted ?? line.sent;
}

function box(): SheetElement {
  return el('span', { class: 'write-box', role: 'img', 'aria-label': 'to be counted' });
}

function claimsPart(facts: NoteSheetFacts): readonly SheetElement[] {
  const words = [...facts.claims, ...(facts.protest === null ? [] : [`Under protest: ${facts.protest}`])];
  if (words.length === 0) return [];
  return [
    of(
      'section',
      'part claims',
      of('h2', 'part-name', 'Not agreed'),
      of('ul', 'caution-list', ...words.map((text) => of('li', 'caution', text))),
    ),
  ];
}

function signaturesPart(facts: NoteSheetFacts): SheetElement {
  const here = facts.signedHere === null ? 'for us: name, signature' : `for us: ${facts.signedHere}`;
  const there =
    facts.signedThere === null ? 'driver or depot: name, signature' : `driver or depot: ${facts.signedThere}`;
  return handLines('Signed', [[here, 'date and time'], [there, 'date and time'], ['under protest because']]);
}
