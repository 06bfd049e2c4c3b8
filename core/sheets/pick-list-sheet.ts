// The list with which somebody walks the racks: what is short before all else, then place after place, the heaviest
// first, with boxes for what was given and what was given instead.
import type { UnitSystem } from '../units/length.ts';
import { handLines } from './by-hand.ts';
import { cautionsPart, pickListCautions } from './cautions.ts';
import { sheetUnits, type SheetUnits } from './drawn-gang.ts';
import { el, of, type Sheet, type SheetElement } from './node.ts';
import { clockWords, paperHead } from './paper-head.ts';
import { row, tick } from './pieces-part.ts';

interface Pieces {
  readonly component: string;
  readonly name: string;
  readonly quantity: number;
}

interface Held {
  readonly owner: string;
  readonly condition: string;
  readonly quantity: number;
}

export interface PickListFacts {
  readonly code: string;
  readonly name: string;
  readonly job: { readonly code: string; readonly name: string } | null;
  /** Of which moment the stock is. */
  readonly at: string;
  readonly neededAt: string | null;
  readonly from: string | null;
  readonly to: string | null;
  readonly places: readonly {
    readonly location: string;
    readonly name: string;
    readonly lines: readonly (Pieces & Held & { readonly weightGrams: number })[];
    readonly weightGrams: number;
  }[];
  readonly short: readonly {
    readonly component: string;
    readonly name: string;
    readonly kind: string;
    readonly owner: string | null;
    readonly wanted: number;
    readonly missing: number;
    readonly elsewhere: readonly (Held & { readonly location: string })[];
  }[];
  readonly hooks: readonly Pieces[];
  readonly coming: readonly {
    readonly turn: string;
    readonly design: string;
    readonly how: 'new' | 'regang' | 'fly-on' | 'is-built';
    readonly from: string | null;
  }[];
  readonly pieces: number;
  readonly weightGrams: number;
  readonly units: UnitSystem;
}

const kind = 'Pick list';

export function pickListSheet(facts: PickListFacts): Sheet {
  const units = sheetUnits(facts.units);
  const { code, name, job } = facts;
  const ofJob = job === null ? '' : ` · ${job.code} ${job.name}`;
  const tree = of(
    'article',
    `sheet sheet-${facts.units}`,
    paperHead({
      kind,
      code,
      name,
      cells: [
        ['Job', job === null ? 'none named' : `${job.code} ${job.name}`],
        ['Needed', clockWords(facts.neededAt, 'no day known')],
        ['Stock of', clockWords(facts.at, '')],
        ['From', facts.from ?? 'wherever pieces lie loose'],
        ['To', facts.to ?? 'written below'],
        ['Pieces', String(facts.pieces)],
        ['Weight', units.weight(facts.weightGrams)],
      ],
      under:
        'Places in the order of their codes; in each the heaviest pieces first, so that they lie lowest.',
    }),
    ...shortPart(facts),
    ...facts.places.map((place) => placePart(place, units)),
    ...hooksPart(facts),
    ...comingPart(facts),
    handLines('Filled in at the racks', [
      ['picked by', 'begun (time)', 'done (time)'],
      ['goes to', 'taken over by', 'note number'],
    ]),
    cautionsPart(pickListCautions),
  );
  return { title: `${kind} ${code} ${name}`, foot: `${kind} ${code}${ofJob}`, tree };
}

function shortPart({ short, pieces }: PickListFacts): readonly SheetElement[] {
  if (short.length === 0) {
    const words = pieces === 0 ? 'Nothing is to be picked.' : 'All of it is there and ready, by the book.';
    return [of('section', 'part pick-short', of('p', 'plain', words))];
  }
  return [
    of(
      'section',
      'part pick-short has-stops',
      of('h2', 'part-name', 'Short'),
      of(
        'ul',
        'caution-list',
        ...short.map((line) =>
          of(
            'li',
            'caution',
            of('strong', 'short-count', `${line.missing} ${line.component}`),
            ` ${line.name}${line.owner === null ? '' : ` of ${line.owner}`}: ${line.wanted} wanted.${elsewhereWords(line.elsewhere)}${askWords(line.kind)}`,
          ),
        ),
      ),
    ),
  ];
}

function elsewhereWords(elsewhere: PickListFacts['short'][number]['elsewhere']): string {
  if (elsewhere.length === 0) return ' None lies elsewhere.';
  const words = elsewhere.map(
    ({ quantity, condition, location, owner }) =>
      `${quantity} ${conditionWords(condition)} at ${location} (${owner})`,
  );
  return ` Not taken: ${words.join(', ')}.`;
}

function askWords(kindOf: string): string {
  return kindOf === 'stiffening-rail' ? ' No rail of another length without the designer.' : '';
}

function conditionWords(condition: string): string {
  return condition === 'ready-hidden' ? 'ready for hidden faces' : condition.replaceAll('-', ' ');
}

function placePart(place: PickListFacts['places'][number], units: SheetUnits): SheetElement {
  return of(
    'section',
    'part pick-place',
    of('h2', 'part-name', of('strong', 'place-code', place.location), ` ${place.name}`),
    of(
      'table',
      'lines pick-lines',
      el(
        'thead',
        {},
        row('th', ['', 'pieces', 'component', '', 'each', 'together', 'given', 'given instead']),
      ),
      el(
        'tbody',
        {},
        ...place.lines.map((line) =>
          row('td', [
            tick(),
            String(line.quantity),
            line.component,
            `${line.name} · of ${line.owner}${line.condition === 'ready' ? '' : `, ${conditionWords(line.condition)}`}`,
            units.weight(line.weightGrams / line.quantity),
            units.weight(line.weightGrams),
            of('span', 'fill-box'),
            of('span', 'fill-box fill-wide'),
          ]),
        ),
      ),
      el(
        'tfoot',
        {},
        row('td', [
          '',
          String(place.lines.reduce((sum, { quantity }) => sum + quantity, 0)),
          '',
          `from ${place.location}`,
          '',
          units.weight(place.weightGrams),
          '',
          '',
        ]),
      ),
    ),
  );
}

function hooksPart({ hooks }: PickListFacts): readonly SheetElement[] {
  if (hooks.length === 0) return [];
  const words = hooks.map(({ quantity, component, name }) => `${quantity} ${component} ${name}`).join(', ');
  return [
    of(
      'section',
      'part pick-hooks',
      of('h2', 'part-name', 'Flies with the crane, in date by its number'),
      of('p', 'plain', `${words}, for one gang in the air at a time. Not in the pieces above.`),
    ),
  ];
}

function comingPart({ coming }: PickListFacts): readonly SheetElement[] {
  if (coming.length === 0) return [];
  const words: Readonly<Record<PickListFacts['coming'][number]['how'], (from: string) => string>> = {
    new: () => 'built new: all its pieces are above',
    regang: (from) => `re-ganged from ${from}: only what is put in is above`,
    'fly-on': (from) => `flies on from ${from}: nothing to pick`,
    'is-built': (from) => `built already, tag ${from}: nothing to pick`,
  };
  return [
    of(
      'section',
      'part pick-coming',
      of('h2', 'part-name', 'The gangs, by the plan'),
      of(
        'table',
        'lines',
        el('thead', {}, row('th', ['turn', 'design', ''])),
        el(
          'tbody',
          {},
          ...coming.map(({ turn, design, how, from }) => row('td', [turn, design, words[how](from ?? '')])),
        ),
      ),
    ),
  ];
}
