// What the parts that show a difference of two plans need: the difference itself and how to say times and money.
import type { Output } from '../../client/shapes.ts';
import type { TimeWords } from '../time-words.ts';

export type Whatif = Output<'plan.whatif'>;
export type Difference = Pick<Whatif, keyof Output<'whatif.compare'> & keyof Whatif>;
export type Summary = Whatif['before'];

export interface Says {
  readonly words: TimeWords;
  readonly money: (cents: number) => string;
  readonly timeZone: string;
}

/** Costs of a plan part by part, in the order in which they are read; the whole stands last. */
export const costParts: readonly { readonly name: string; readonly of: (summary: Summary) => number }[] = [
  { name: 'Labour', of: ({ cost }) => cost.labourCents },
  { name: 'Hire', of: ({ cost }) => cost.hireCents },
  { name: 'Changes of what was told', of: ({ cost }) => cost.changeCents },
  { name: 'Pieces planned to come', of: ({ plannedCents }) => plannedCents },
];

export function signed(cents: number, money: (cents: number) => string): string {
  if (cents === 0) return 'no change';
  return `${cents > 0 ? '+' : '−'}${money(Math.abs(cents))}`;
}

/** Of a day with another load: crew and crane as they were and as they would be, and whether that is more than there is. */
export interface LoadLine {
  readonly key: string;
  readonly what: string;
  readonly text: string;
  readonly over: boolean;
}

export function loadLines(days: Difference['days'], dayWords: (date: string) => string): readonly LoadLine[] {
  return days.flatMap(({ date, before, after }) =>
    loads.flatMap(({ what, unit, needed, there }) => {
      const [was, is] = [before === null ? 0 : needed(before), after === null ? 0 : needed(after)];
      const [had, has] = [before === null ? 0 : there(before), after === null ? 0 : there(after)];
      if (was === null || is === null || (was === is && had === has)) return [];
      return [
        {
          key: `${date}${what}`,
          what: `${dayWords(date)}, ${what}`,
          text: `${amount(is)} of ${amount(has ?? 0)} ${unit}, was ${amount(was)}`,
          over: is > (has ?? 0),
        },
      ];
    }),
  );
}

type Load = NonNullable<Difference['days'][number]['before']>;

const loads: readonly {
  readonly what: string;
  readonly unit: string;
  readonly needed: (load: Load) => number | null;
  readonly there: (load: Load) => number | null;
}[] = [
  { what: 'crew', unit: 'h', needed: (load) => load.crewHoursNeeded, there: (load) => load.crewHoursThere },
  {
    what: 'crane',
    unit: 'min',
    needed: (load) => load.craneMinutesNeeded,
    there: (load) => load.craneMinutesThere,
  },
  {
    what: 'pads',
    unit: 'places',
    needed: (load) => load.padPlacesNeeded,
    there: (load) => load.padPlacesThere,
  },
];

function amount(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** Lines that say the same once, with their number in front. */
export function grouped(lines: readonly string[]): readonly string[] {
  return [...Map.groupBy(lines, (line) => line)].map(([line, all]) =>
    all.length === 1 ? line : `${all.length} × ${line}`,
  );
}
