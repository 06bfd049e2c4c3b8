// The list of what will be short: how many, from when to when, who holds the pieces, the cheapest way out, whom to ask, and what
// was decided.
import type { UnitSystem } from '../units/length.ts';
import { cautionsPart, shortfallCautions } from './cautions.ts';
import { momentWords } from './day-words.ts';
import { el, of, type Sheet, type SheetElement, type SheetNode } from './node.ts';
import { paperHead } from './paper-head.ts';
import { type Phone, phonesPart, withPhone } from './phones-part.ts';
import { row } from './pieces-part.ts';

export interface ShortLine {
  readonly component: string;
  readonly name: string;
  readonly quantity: number;
  /** Instants in the job's time zone. */
  readonly from: string;
  readonly to: string;
  /** "P05: 42", the most first. */
  readonly holders: readonly string[];
  readonly way: ShortWay;
  /** Alike pieces to spare, for the designer alone. */
  readonly near: readonly string[];
  /** What was decided, in words; empty where nothing was. */
  readonly decision: string;
}

export type ShortWay =
  | {
      readonly kind: 'found';
      readonly text: string;
      /** "about $12" */
      readonly cost: string;
      readonly movesClash: boolean;
      /** The last day on which hired pieces can be ordered, in words; empty where nothing is hired. */
      readonly order: string;
      readonly ask: readonly string[];
    }
  | { readonly kind: 'none'; readonly why: readonly string[] }
  | { readonly kind: 'not-looked-for' };

export interface ShortfallSheetFacts {
  readonly job: { readonly code: string; readonly name: string };
  readonly changeNumber: number;
  readonly lines: readonly ShortLine[];
  readonly phones: readonly Phone[];
  readonly units: UnitSystem;
}

const kind = 'Shortfalls';

export function shortfallSheet(facts: ShortfallSheetFacts): Sheet {
  const { job, lines, changeNumber } = facts;
  const tree = of(
    'article',
    `sheet sheet-${facts.units} shortfall-sheet`,
    paperHead({
      kind,
      code: job.code,
      name: job.name,
      cells: [
        ['Job', job.code],
        ['Shortfalls', String(lines.length)],
        ['Plan', `of entry ${changeNumber}`],
      ],
      under: 'Superseded once the plan changes: ask before you order from an older one.',
    }),
    linesPart(lines, facts.phones),
    ...phonesPart(facts.phones),
    cautionsPart(shortfallCautions),
  );
  return {
    title: `${kind} ${job.code}`,
    foot: `${kind} · ${job.code} ${job.name} · entry ${changeNumber}`,
    tree,
  };
}

function linesPart(lines: readonly ShortLine[], phones: readonly Phone[]): SheetElement {
  const heads = ['short', 'component', 'from, to', 'held by', 'cheapest way out', 'whom to ask', 'decided'];
  if (lines.length === 0)
    return of('section', 'part', of('p', 'soft', 'The plan has every component ready on its day.'));
  return of(
    'section',
    'part',
    of(
      'table',
      'lines shortfall-lines',
      el('thead', {}, row('th', heads)),
      el('tbody', {}, ...lines.map((line) => lineRow(line, phones))),
    ),
  );
}

function lineRow(line: ShortLine, phones: readonly Phone[]): SheetElement {
  const { way } = line;
  return row('td', [
    of('strong', 'is-short', String(line.quantity)),
    el('div', {}, el('strong', {}, line.component), ` ${line.name}`),
    el('div', {}, el('div', {}, momentWords(line.from)), el('div', {}, momentWords(line.to))),
    el('div', {}, ...line.holders.flatMap((holder) => [of('span', 'holder', holder), ' '])),
    el('div', {}, ...wayNodes(line)),
    way.kind === 'found' && way.ask.length > 0
      ? [...new Set(way.ask)].map((who) => withPhone(who, phones)).join('; ')
      : '………………',
    line.decision === '' ? '………………' : line.decision,
  ]);
}

function wayNodes({ way, near }: ShortLine): readonly SheetNode[] {
  const asks = near.length === 0 ? [] : [of('div', 'soft', `Ask the designer: ${near.join('; ')}`)];
  if (way.kind === 'not-looked-for') return ['not looked for: open it on the Shortfalls screen'];
  if (way.kind === 'none')
    return [
      of('strong', 'is-short', 'No way out found.'),
      ...way.why.map((why) => of('div', 'soft', why)),
      ...asks,
    ];
  return [
    el('div', {}, `${way.text}: ${way.cost}`),
    ...(way.movesClash
      ? [of('strong', 'over', 'Moves the clash: other pieces or days are short instead.')]
      : []),
    ...(way.order === '' ? [] : [of('div', 'soft', way.order)]),
    ...asks,
  ];
}
