// A component that the job needs and nobody has: none in stock at any time, none to come, none to be hired. Named with
// everything that asks for it, so that one entry can be put right; the plan is made all the same.
import type { PourFinding } from '../pour-findings.ts';
import type { LooseTurn, PourTurn } from '../turns-from-pours.ts';

export interface ComponentThere {
  /** The most that is there at any time. */
  readonly most: number;
  readonly canBeHired: boolean;
}

/** @param piecesOf of a design, by component */
export function neverThere(
  turns: readonly PourTurn[],
  loose: readonly LooseTurn[],
  piecesOf: (design: string) => Readonly<Record<string, number>>,
  there: (component: string) => ComponentThere,
): PourFinding[] {
  const askedBy = new Map<string, { readonly designs: Set<string>; readonly pours: Set<string> }>();
  const ask = (component: string, pour: string, design: string | null): void => {
    const known = askedBy.get(component) ?? { designs: new Set(), pours: new Set() };
    askedBy.set(component, known);
    known.pours.add(pour);
    if (design !== null) known.designs.add(design);
  };
  for (const turn of turns)
    for (const [component, quantity] of Object.entries(piecesOf(turn.design)))
      if (quantity > 0) ask(component, turn.pour, turn.design);
  for (const { component, pour, quantity } of loose) if (quantity > 0) ask(component, pour, null);
  return [...askedBy].flatMap(([component, { designs, pours }]) => {
    const { most, canBeHired } = there(component);
    if (most > 0 || canBeHired) return [];
    return [
      {
        rule: 'nobody-has-it',
        severity: 'stop' as const,
        message: `${component} is needed by ${listed([...designs, ...(designs.size === 0 ? pours : [])])}, but none is in stock or promised, and it cannot be hired.`,
        where: component,
      },
    ];
  });
}

/** Not more than four by name. */
function listed(names: readonly string[]): string {
  if (names.length <= 4) return names.join(', ');
  return `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`;
}
