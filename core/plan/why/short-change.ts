// By how many pieces two plans of one job differ in what is short: of every component the greatest rise over all moments,
// and the greatest fall. Shortfalls that only begin an hour later are no rise.
import type { Shortfall } from '../contract.ts';
import { msOf } from '../local-time.ts';

export interface ShortChange {
  readonly component: string;
  /** So many pieces more are short at the worst moment; below zero, fewer. */
  readonly more: number;
  /** The first moment at which it is as many. */
  readonly from: string;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly quantity: number;
  readonly text: string;
  readonly endText: string;
}

/** Rises first, each by its component's place in the later list, then falls. */
export function shortChanges(before: readonly Shortfall[], after: readonly Shortfall[]): ShortChange[] {
  const was = Map.groupBy(before, ({ component }) => component);
  const is = Map.groupBy(after, ({ component }) => component);
  const rises: ShortChange[] = [];
  const falls: ShortChange[] = [];
  for (const component of new Set([...is.keys(), ...was.keys()])) {
    const [old, fresh] = [stretches(was.get(component)), stretches(is.get(component))];
    let [most, mostAt, least, leastAt] = [0, '', 0, ''];
    const moments = new Map(
      [...old, ...fresh].flatMap((each): [number, string][] => [
        [each.from, each.text],
        [each.to, each.endText],
      ]),
    );
    for (const [at, text] of [...moments].toSorted(([one], [other]) => one - other)) {
      const more = levelAt(fresh, at) - levelAt(old, at);
      if (more > most) [most, mostAt] = [more, text];
      if (more < least) [least, leastAt] = [more, text];
    }
    if (most > 0) rises.push({ component, more: most, from: mostAt });
    if (least < 0) falls.push({ component, more: least, from: leastAt });
  }
  return [...rises, ...falls];
}

function stretches(list: readonly Shortfall[] = []): readonly Stretch[] {
  return list.map(({ from, to, quantity }) => ({
    from: msOf(from),
    to: msOf(to),
    quantity,
    text: from,
    endText: to,
  }));
}

/** Of one component no two shortfalls are at one moment. */
function levelAt(list: readonly Stretch[], at: number): number {
  return list.find(({ from, to }) => from <= at && at < to)?.quantity ?? 0;
}
