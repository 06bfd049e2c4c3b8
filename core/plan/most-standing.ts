// The most pieces of each component that stand at pours at once, whoever serves them: what spares are reckoned from.
import type { LooseTurn, PourTurn } from './turns-from-pours.ts';

export interface MostStanding {
  readonly pieces: number;
  /** The most pours at which it stands at once. */
  readonly pours: number;
}

interface Stretch {
  readonly component: string;
  readonly pour: string;
  readonly quantity: number;
  readonly from: number;
  readonly to: number;
}

/** @param piecesOf the pieces of a design by component */
export function mostStanding(
  turns: readonly PourTurn[],
  loose: readonly LooseTurn[],
  piecesOf: (design: string) => Readonly<Record<string, number>>,
): ReadonlyMap<string, MostStanding> {
  const stretches: Stretch[] = [
    ...turns.flatMap(({ design, pour, from, to }) =>
      Object.entries(piecesOf(design)).map(([component, quantity]) => ({
        component,
        pour,
        quantity,
        from,
        to,
      })),
    ),
    ...loose,
  ];
  return new Map(
    [...Map.groupBy(stretches, ({ component }) => component)].map(([component, own]) => [
      component,
      mostOf(own),
    ]),
  );
}

function mostOf(stretches: readonly Stretch[]): MostStanding {
  // What ends at a moment is gone before what begins at it.
  const ends = stretches.flatMap((stretch) => [
    { at: stretch.from, begins: true, stretch },
    { at: stretch.to, begins: false, stretch },
  ]);
  ends.sort((one, other) => one.at - other.at || Number(one.begins) - Number(other.begins));
  const byPour = new Map<string, number>();
  let [now, pieces, pours] = [0, 0, 0];
  for (const { begins, stretch } of ends) {
    const by = begins ? 1 : -1;
    now += by * stretch.quantity;
    const there = (byPour.get(stretch.pour) ?? 0) + by;
    if (there === 0) byPour.delete(stretch.pour);
    else byPour.set(stretch.pour, there);
    pieces = Math.max(pieces, now);
    pours = Math.max(pours, byPour.size);
  }
  return { pieces, pours };
}
