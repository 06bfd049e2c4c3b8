// The list by which a truck is loaded and unloaded: weights against the payload, the load from the side and from above,
// what goes on in which order and comes off at which stop, and lines to sign for who tied it down.
import type { UnitSystem } from '../units/length.ts';
import { handLines, tickList } from './by-hand.ts';
import { beforeLeaving, cautionsPart, loadingCautions } from './cautions.ts';
import { sheetUnits, type SheetUnits } from './drawn-gang.ts';
import { loadDrawing } from './load-drawing.ts';
import { type DrawnStack, layerWords } from './load-places.ts';
import { el, of, type Sheet, type SheetElement } from './node.ts';
import { clockWords, paperHead } from './paper-head.ts';
import { row, tick } from './pieces-part.ts';

export interface LoadingFacts {
  readonly truck: {
    readonly code: string;
    readonly name: string;
    readonly payloadGrams: number;
    readonly deckLengthNm: number;
    readonly deckWidthNm: number;
    readonly stackHeightNm: number;
  };
  /** Of the note that it carries. */
  readonly number: string | null;
  readonly stacks: readonly DrawnStack[];
  readonly weightGrams: number;
  readonly usedLengthNm: number;
  readonly usedWidthNm: number;
  readonly highestNm: number;
  /** Stacks and levels from 1, in the order in which they come off. */
  readonly unloading: readonly { readonly stop: number; readonly stack: number; readonly level: number }[];
  readonly names: Readonly<Record<string, string>>;
  readonly leavesAt: string | null;
  readonly tiedDownBy: string | null;
  readonly remark: string | null;
  /** Limits of the truck as it is now that the load passes. */
  readonly passes: readonly string[];
  readonly units: UnitSystem;
}

const kind = 'Loading list';

export function loadingSheet(facts: LoadingFacts): Sheet {
  const units = sheetUnits(facts.units);
  const { truck, number } = facts;
  const share = Math.floor((1000 * facts.weightGrams) / truck.payloadGrams) / 10;
  const tree = of(
    'article',
    `sheet sheet-${facts.units}`,
    paperHead({
      kind,
      code: truck.code,
      name: truck.name,
      cells: [
        ['Note', number ?? 'none'],
        ['Leaves', clockWords(facts.leavesAt, 'not said')],
        [
          'Weight of payload',
          `${units.weight(facts.weightGrams)} of ${units.weight(truck.payloadGrams)}, ${share} %`,
        ],
        ['Deck used', `${units.length(facts.usedLengthNm)} of ${units.length(truck.deckLengthNm)}`],
        ['Highest stack', `${units.length(facts.highestNm)} of ${units.length(truck.stackHeightNm)}`],
        ['Tied down by', facts.tiedDownBy ?? 'nobody yet: sign below'],
      ],
      under: `${facts.remark === null ? '' : `${facts.remark} · `}The weight on each axle is not computed. Sizes of bundles, boxes and bearers that the catalogue does not have are defaults: measure where it is tight.`,
    }),
    ...passesPart(facts),
    loadDrawing(facts.stacks, truck, units),
    orderPart(facts, units),
    tickList('Before it leaves', beforeLeaving),
    handLines('Filled in at the truck', [
      ['loaded by', 'tied down by', 'driver'],
      ['vehicle', 'left (time)', 'arrived (time)', 'taken over by'],
    ]),
    cautionsPart(loadingCautions),
  );
  return {
    title: `${kind} ${truck.code} ${truck.name}`,
    foot: `${kind} ${truck.code}${number === null ? '' : ` · note ${number}`}`,
    tree,
  };
}

function passesPart({ passes }: LoadingFacts): readonly SheetElement[] {
  if (passes.length === 0) return [];
  const words = passes.map((each) => each.replaceAll('-', ' ')).join(', ');
  return [
    of(
      'section',
      'part has-stops',
      of('h2', 'part-name', 'Not to leave so'),
      of('p', 'plain', `Since this load was kept, its truck was changed. It now passes: ${words}.`),
    ),
  ];
}

/** In the order of loading; numbered as it comes off. */
function orderPart({ stacks, unloading, names }: LoadingFacts, units: SheetUnits): SheetElement {
  const rows = unloading
    .map((each, index) => ({ ...each, off: index + 1 }))
    .reverse()
    .flatMap(({ stop, stack, level, off }) => {
      const layer = stacks[stack - 1]?.layers[level - 1];
      if (layer === undefined) return [];
      const { what } = layer;
      const code = 'component' in what ? what.component : 'container' in what ? what.container : what.gang;
      return [
        row('td', [
          tick(),
          `${stack}`,
          level === 1
            ? 'on the deck'
            : `${level}th from the deck`.replace('2th', '2nd').replace('3th', '3rd'),
          layerWords(layer),
          names[code] ?? '',
          units.weight(layer.weightGrams),
          String(stop),
          String(off),
        ]),
      ];
    });
  return of(
    'section',
    'part load-order',
    of('h2', 'part-name', 'In the order of loading'),
    of(
      'table',
      'lines load-lines',
      el('thead', {}, row('th', ['', 'stack', 'level', 'what', '', 'weight', 'stop', 'comes off as no.'])),
      el('tbody', {}, ...rows),
    ),
  );
}
