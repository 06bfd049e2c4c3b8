// The strip ticket on paper, an equal of the screen: who cleared it, every gang with where it goes next in the largest
// type, what is expected back in the order of the screen with boxes to count in, what is taken for what, cautions.
import { handLines, tickList } from './by-hand.ts';
import { cautionsPart, stripCautions } from './cautions.ts';
import { el, of, printedHere, type Sheet, type SheetElement, type SheetNode } from './node.ts';
import { row } from './pieces-part.ts';
import { qrMark } from './qr-mark.ts';
import { clockWords } from './paper-head.ts';
import type { UnitSystem } from '../units/length.ts';

export interface StripSheetLine {
  readonly component: string;
  readonly name: string;
  readonly expected: number;
  /** On a ticket of late finds: how many were missing. */
  readonly sought: number;
  /** Of the design, and nowhere in the book. */
  readonly unbooked: number;
  readonly lookAlike: string | null;
  /** By condition in the order of the columns; null while the ticket is open. */
  readonly counted: readonly number[] | null;
  readonly missing: number | null;
}

export interface StripSheetPart {
  readonly title: string;
  readonly isLoose: boolean;
  readonly next: string;
  readonly lines: readonly StripSheetLine[];
}

export interface StripSheetFacts {
  /** S-7 */
  readonly name: string;
  readonly job: { readonly code: string; readonly name: string };
  readonly pour: { readonly code: string; readonly name: string };
  readonly state: 'open' | 'booked' | 'dropped';
  /** By the job's clock. */
  readonly plannedAt: string;
  readonly place: string;
  readonly cleared: {
    readonly by: string;
    readonly at: string;
    readonly clause: string;
    readonly evidence: string;
  } | null;
  readonly booked: { readonly at: string; readonly who: string } | null;
  /** The ticket whose late finds this one counts. */
  readonly follows: string | null;
  readonly remark: string | null;
  readonly parts: readonly StripSheetPart[];
  /** What a scanner reads from it. */
  readonly scanCode: string;
  readonly units: UnitSystem;
}

const kind = 'Strip ticket';
const columns = ['ready', 'hidden faces', 'to clean', 'to repair', 'quarantine', 'scrap'];

export function stripSheet(facts: StripSheetFacts): Sheet {
  const isLate = facts.follows !== null;
  const tree = of(
    'article',
    `sheet sheet-${facts.units}`,
    head(facts),
    ...(isLate ? [] : [clearancePart(facts)]),
    ...facts.parts.map((part) => partPart(part, isLate)),
    extraPart(),
    handLines('Counted', [
      ['counted by', 'from (time)', 'until (time)', 'signature'],
      ['counted by', 'from (time)', 'until (time)', 'signature'],
      ['scrap confirmed by a second person', 'entered by', 'date and time'],
    ]),
    ...(isLate ? [] : [tickList('Before the last ties are loosened', beforeStripping)]),
    cautionsPart(stripCautions),
  );
  const { job, pour } = facts;
  return {
    title: `${kind} ${facts.name} ${pour.code}`,
    foot: `${kind} ${facts.name} · pour ${pour.code} · ${job.code} ${job.name}`,
    tree,
  };
}

const beforeStripping: readonly string[] = [
  'The clearance above is entered: a name, a time, the clause, the evidence.',
  'The crane is on and firm on this gang before its last ties are loosened.',
  'Nobody is below or beside the gang; the zone is closed.',
  'Loose hardware, tools, timber and concrete are off the gang and its platform.',
  'Nothing of the next gang is held by this one.',
  'What the concrete needs after the strip is ready: re-bracing, curing, edges made firm.',
];

function head(facts: StripSheetFacts): SheetElement {
  const { job, pour, follows, booked } = facts;
  const cells: readonly (readonly [string, SheetNode])[] = [
    ['Job', `${job.code} ${job.name}`],
    ['Planned to be stripped', `${clockWords(facts.plannedAt, '')} (a forecast)`],
    ['Laid down at', facts.place],
    ...(follows === null ? [] : [['Late finds of', follows] as const]),
    ['State', booked === null ? facts.state : `booked ${clockWords(booked.at, '')} by ${booked.who}`],
    ['Printed', printedHere()],
  ];
  return of(
    'header',
    'sheet-head',
    of(
      'div',
      'sheet-name',
      of('span', 'sheet-kind', kind),
      of('h1', 'sheet-gang', of('span', 'sheet-code', facts.name), ` ${pour.code} ${pour.name}`),
      of('span', 'sheet-qr', qrMark(facts.scanCode, 18)),
    ),
    of(
      'dl',
      'sheet-cells',
      ...cells.map(([label, value]) =>
        of('div', 'sheet-cell', of('dt', 'cell-label', label), of('dd', 'cell-value', value)),
      ),
    ),
    of(
      'p',
      'superseded',
      `${facts.remark === null || facts.remark === '' ? '' : `${facts.remark} · `}A time on this sheet is a forecast, and a forecast is never a release.`,
    ),
  );
}

function clearancePart({ cleared }: StripSheetFacts): SheetElement {
  if (cleared === null)
    return handLines('Cleared to strip: nobody is entered', [
      ['cleared by', 'date and time', 'signature'],
      ['under which clause', 'on what evidence (strength, test numbers, hours)'],
    ]);
  return of(
    'section',
    'part strip-cleared',
    of('h2', 'part-name', 'Cleared to strip'),
    of(
      'p',
      'cleared-words',
      of('strong', 'cleared-by', cleared.by),
      `, ${clockWords(cleared.at, '')} · clause: ${cleared.clause === '' ? 'none named' : cleared.clause}`,
      ` · evidence: ${cleared.evidence === '' ? 'none named' : cleared.evidence}`,
    ),
    handRow(['signature']),
  );
}

function handRow(fields: readonly string[]): SheetElement {
  return of(
    'div',
    'hand-row',
    ...fields.map((field) => of('div', 'hand-field', of('span', 'hand-name', field))),
  );
}

function partPart(part: StripSheetPart, isLate: boolean): SheetElement {
  const heads = ['', 'component', isLate ? 'was missing' : 'expected', ...columns, 'missing'];
  return of(
    'section',
    'part strip-part',
    of('h2', 'part-name', part.title),
    of('p', 'strip-next', part.next),
    ...(part.lines.length === 0
      ? [of('p', 'soft', 'Nothing is booked to it.')]
      : [
          of(
            'table',
            'lines strip-lines',
            el('thead', {}, row('th', heads)),
            el('tbody', {}, ...part.lines.map((line) => lineRow(line, isLate))),
          ),
        ]),
  );
}

function lineRow(line: StripSheetLine, isLate: boolean): SheetElement {
  const alike = line.lookAlike === null ? '' : ` · look-alike ${line.lookAlike}`;
  const unbooked = line.unbooked === 0 ? '' : ` · ${line.unbooked} more by the design, not in the book`;
  const figures = line.counted ?? columns.map(() => null);
  return row('td', [
    of('strong', 'strip-code', line.component),
    of('span', 'strip-name', `${line.name}${unbooked}`, of('span', 'strip-alike', alike)),
    of('strong', 'strip-expected', String(isLate ? line.sought : line.expected)),
    ...figures.map((figure) => (figure === null ? of('span', 'strip-box') : String(figure))),
    line.missing === null ? of('span', 'strip-box') : String(line.missing),
  ]);
}

/** More than expected, or not expected at all: on lines of its own, so that it hides nothing that is missing. */
function extraPart(): SheetElement {
  const blank = Array.from({ length: 3 }, () => row('td', ['\u00A0', '', '', '', '']));
  return of(
    'section',
    'part strip-extra',
    of('h2', 'part-name', 'More than expected, or not on the list'),
    of(
      'table',
      'lines',
      el('thead', {}, row('th', ['component', 'pieces', 'condition', 'owner by the mark', 'where it was'])),
      el('tbody', {}, ...blank),
    ),
  );
}
