// Three dates out of many: the earliest, the cheapest, the earliest that breaks nothing (or where all break something, the
// least). Where one date is two of them, the next that breaks little stands beside, so that there is something to choose from.

export interface WeighedDate {
  /** In how many ways the plan with it is worse than the plan without. */
  readonly breaks: number;
  /** Pieces that are short and cannot be hired, then money. */
  readonly unmet: number;
  readonly costCents: number;
}

export type DateMerit = 'earliest' | 'cheapest' | 'breaks-nothing' | 'breaks-least';

export interface ChosenDate<Date extends WeighedDate> {
  readonly date: Date;
  readonly merits: readonly DateMerit[];
}

/** @param dates in order of time */
export function chooseDates<Date extends WeighedDate>(
  dates: readonly Date[],
  wanted = 3,
): readonly ChosenDate<Date>[] {
  const [earliest] = dates;
  const [cheapest] = [...dates].sort(cheaper);
  // Of those that break as little, sorting leaves the earliest first.
  const [whole] = [...dates].sort((one, other) => one.breaks - other.breaks);
  const chosen = new Set([earliest, cheapest, whole].filter((each) => each !== undefined));
  const rest = [...dates].sort((one, other) => one.breaks - other.breaks || cheaper(one, other));
  for (const each of rest) if (chosen.size < wanted) chosen.add(each);
  return dates
    .filter((each) => chosen.has(each))
    .map((date) => ({
      date,
      merits: [
        ...(date === earliest ? (['earliest'] as const) : []),
        ...(date === cheapest ? (['cheapest'] as const) : []),
        ...(date === whole ? ([date.breaks === 0 ? 'breaks-nothing' : 'breaks-least'] as const) : []),
      ],
    }));
}

/** Of equal ones the earlier stays first: sorting keeps their order. */
function cheaper(one: WeighedDate, other: WeighedDate): number {
  return one.unmet - other.unmet || one.costCents - other.costCents;
}
