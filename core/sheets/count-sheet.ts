// The sheet on which a yard is counted: by place in shelf order, look-alikes one after the other, a box a condition,
// a row a counter, what moves meanwhile written down beside it. Counted blind it bears no booked figure.
import type { UnitSystem } from '../units/length.ts';
import { handLines } from './by-hand.ts';
import { cautionsPart, countCautions } from './cautions.ts';
import { sheetUnits } from './drawn-gang.ts';
import { lookAlikePart, type SheetPair } from './look-alike-part.ts';
import { el, of, printedHere, type Sheet, type SheetElement, type SheetNode } from './node.ts';
import { row } from './pieces-part.ts';
import { qrMark } from './qr-mark.ts';

export interface CountSheetLine {
  readonly component: string;
  readonly name: string;
  readonly owner: string | null;
  readonly class: string;
  /** Null where it is counted blind. */
  readonly booked: number | null;
  readonly lookAlikes: readonly string[];
  readonly bundleSize: number | null;
}

export interface CountSheetFacts {
  /** N-3 */
  readonly name: string;
  readonly kind: 'spot' | 'location';
  readonly blind: boolean;
  readonly counters: 1 | 2;
  readonly startedAt: string;
  readonly remark: string | null;
  /** What a scanner reads from it. */
  readonly scanCode: string;
  readonly places: readonly {
    readonly code: string;
    readonly name: string;
    readonly lines: readonly CountSheetLine[];
  }[];
  readonly pairs: readonly SheetPair[];
  /** Components of two owners: only the mark tells them apart. */
  readonly twoOwners: readonly { readonly component: string; readonly owners: readonly string[] }[];
  readonly moved: readonly {
    readonly component: string;
    readonly quantity: number;
    readonly from: string;
    readonly to: string;
    readonly at: string;
  }[];
  readonly units: UnitSystem;
}

const kind = 'Count sheet';
const conditions = ['ready', 'hidden faces', 'to clean', 'to repair', 'quarantine', 'scrap'];

export function countSheet(facts: CountSheetFacts): Sheet {
  const units = sheetUnits(facts.units);
  const tree = of(
    'article',
    `sheet sheet-${facts.units}`,
    head(facts),
    ...facts.places.map((place) => placePart(place, facts)),
    ...lookAlikePart(facts.pairs, units),
    ...ownersPart(facts),
    movedPart(facts),
    handLines('Counted by', [
      ...Array.from({ length: facts.counters }, (_, index) => [
        `counter ${index + 1}`,
        'from (time)',
        'until (time)',
        'signature',
      ]),
      ['entered by', 'date and time'],
    ]),
    cautionsPart(countCautions),
  );
  return { title: `${kind} ${facts.name}`, foot: `${kind} ${facts.name}`, tree };
}

function head(facts: CountSheetFacts): SheetElement {
  const cells: readonly (readonly [string, SheetNode])[] = [
    ['Kind', facts.kind === 'spot' ? 'spot check' : 'everything at its places'],
    ['Begins', timeWords(facts.startedAt)],
    ['Counted', facts.blind ? 'blind: no booked figures' : 'with booked figures'],
    ['Counters', String(facts.counters)],
    ['Printed', printedHere()],
  ];
  const places = facts.places.map(({ code, name }) => `${code} ${name}`).join(', ');
  return of(
    'header',
    'sheet-head',
    of(
      'div',
      'sheet-name',
      of('span', 'sheet-kind', kind),
      of('h1', 'sheet-gang', of('span', 'sheet-code', facts.name), ` ${places}`),
      of('span', 'sheet-qr', qrMark(facts.scanCode, 16)),
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
      `${facts.remark === null ? '' : `${facts.remark} · `}Write what you see, by condition. A bag that was not opened: ~20. Bundles: 12 x 20.`,
    ),
  );
}

function placePart(place: CountSheetFacts['places'][number], facts: CountSheetFacts): SheetElement {
  const heads = [
    '',
    'component',
    ...(facts.blind ? [] : ['book']),
    ...(facts.counters === 2 ? ['by'] : []),
    ...conditions,
    'at (time)',
  ];
  return of(
    'section',
    'part count-place',
    of('h2', 'part-name', of('strong', 'place-code', place.code), ` ${place.name}`),
    of(
      'table',
      'lines count-lines',
      el('thead', {}, row('th', heads)),
      el('tbody', {}, ...inPairs(place.lines).flatMap((line) => lineRows(line, facts))),
      ...(facts.kind === 'spot'
        ? []
        : [el('tfoot', {}, row('td', ['', 'found beside the list', ...heads.slice(2).map(() => '')]))]),
    ),
  );
}

/** Look-alikes of a place one after the other. */
function inPairs(lines: readonly CountSheetLine[]): readonly CountSheetLine[] {
  const placed = new Set<CountSheetLine>();
  for (const line of lines) {
    placed.add(line);
    for (const other of lines) if (line.lookAlikes.includes(other.component)) placed.add(other);
  }
  return [...placed];
}

function lineRows(line: CountSheetLine, facts: CountSheetFacts): readonly SheetElement[] {
  const alike = line.lookAlikes.length === 0 ? '' : ` · not ${line.lookAlikes.join(', ')}`;
  const bundle = line.bundleSize === null ? '' : ` · ${line.bundleSize} a bundle`;
  const owner = line.owner === null ? '' : ` · of ${line.owner}`;
  return Array.from({ length: facts.counters }, (_, index) =>
    row('td', [
      index === 0 ? of('strong', 'count-code', line.component) : '',
      index === 0 ? `${line.name}${owner}${alike}${bundle}` : '',
      ...(facts.blind ? [] : [index === 0 ? String(line.booked ?? 0) : '']),
      ...(facts.counters === 2 ? [String(index + 1)] : []),
      ...conditions.map(() => of('span', 'count-box')),
      of('span', 'count-box'),
    ]),
  );
}

function ownersPart({ twoOwners }: CountSheetFacts): readonly SheetElement[] {
  if (twoOwners.length === 0) return [];
  const words = twoOwners.map(({ component, owners }) => `${component}: ${owners.join(' and ')}`).join('; ');
  return [
    of(
      'section',
      'part two-owners',
      of('h2', 'part-name', 'Of two owners: look at the mark'),
      of('p', 'plain', words),
    ),
  ];
}

function movedPart({ moved }: CountSheetFacts): SheetElement {
  const blank = Array.from({ length: Math.max(3, 6 - moved.length) }, () =>
    row('td', ['\u00A0', '', '', '', '']),
  );
  return of(
    'section',
    'part count-moves',
    of('h2', 'part-name', 'What moves while it is counted'),
    of(
      'table',
      'lines',
      el('thead', {}, row('th', ['time', 'pieces', 'component', 'from', 'to'])),
      el(
        'tbody',
        {},
        ...moved.map(({ at, quantity, component, from, to }) =>
          row('td', [timeWords(at), String(quantity), component, from, to]),
        ),
        ...blank,
      ),
    ),
  );
}

/** By the clock of whoever entered it. */
function timeWords(at: string): string {
  return at.slice(0, 16).replace('T', ' ');
}
