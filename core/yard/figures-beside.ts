// The three figures of an owner's component side by side, each the newest of its kind, with what differs.
import type { FigureSide, SignedFigure } from './signed-figure.ts';

export interface FiguresBeside {
  readonly owner: string;
  readonly component: string;
  readonly theirs: SignedFigure | null;
  readonly ours: SignedFigure | null;
  readonly agreed: SignedFigure | null;
  /** The owner's less ours, where both are there and nothing was agreed since. */
  readonly open: number | null;
}

/** By owner and component. @param figures oldest first */
export function figuresBeside(figures: readonly SignedFigure[]): readonly FiguresBeside[] {
  const groups = new Map<string, SignedFigure[]>();
  for (const figure of figures) {
    const key = `${figure.owner}\n${figure.component}`;
    groups.set(key, [...(groups.get(key) ?? []), figure]);
  }
  return [...groups]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .flatMap(([, own]) => {
      const [first] = own;
      return first === undefined ? [] : [besideOf(first, own)];
    });
}

function besideOf({ owner, component }: SignedFigure, own: readonly SignedFigure[]): FiguresBeside {
  const newest = (whose: FigureSide): SignedFigure | null =>
    own.findLast((figure) => figure.whose === whose) ?? null;
  const [theirs, ours, agreed] = [newest('owner'), newest('ours'), newest('agreed')];
  const isSettled = agreed !== null && agreed.number > Math.max(theirs?.number ?? 0, ours?.number ?? 0);
  const open = theirs === null || ours === null || isSettled ? null : theirs.quantity - ours.quantity;
  return { owner, component, theirs, ours, agreed, open };
}
