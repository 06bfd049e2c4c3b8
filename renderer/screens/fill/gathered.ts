// Lists of a proposal with what is alike put on one line.
import type { Proposal } from './fill-shapes.ts';

type Finding = Proposal['findings'][number];

export interface GatheredFinding extends Pick<Finding, 'severity' | 'message'> {
  readonly places: readonly string[];
}

const graver: Readonly<Record<Finding['severity'], number>> = { stop: 0, caution: 1, note: 2 };

/** Stops first, then cautions, then notes; of the same words one line. */
export function gatheredFindings(findings: readonly Finding[]): readonly GatheredFinding[] {
  const lines = new Map<string, { severity: Finding['severity']; message: string; places: string[] }>();
  for (const { severity, message, where } of findings) {
    const key = `${severity} ${message}`;
    const line = lines.get(key) ?? { severity, message, places: [] };
    if (typeof where === 'string' && !line.places.includes(where)) line.places.push(where);
    lines.set(key, line);
  }
  return [...lines.values()].sort((one, other) => graver[one.severity] - graver[other.severity]);
}

type Loose = Proposal['loose'][number];

export interface GatheredLoose extends Pick<Loose, 'purpose' | 'component' | 'quantity'> {
  readonly made?: NonNullable<Loose['made']>;
  readonly places: readonly string[];
}

/**
 * Pieces of one purpose, component and size. Of locks it says on which leg, not at which joint: the drawing shows where
 * gangs meet.
 */
export function gatheredLoose(loose: readonly Loose[]): readonly GatheredLoose[] {
  const lines = new Map<string, GatheredLoose>();
  for (const { purpose, component, quantity, made, side, where } of loose) {
    const key = JSON.stringify([purpose, component, made]);
    const stretch = purpose === 'gang-locks' ? where.replace(/, [^,]* along$/u, '') : where;
    const place = side === 'both' || where.startsWith('side') ? stretch : `${stretch}, side ${side}`;
    const before = lines.get(key)?.places ?? [];
    const line = lines.get(key);
    lines.set(key, {
      purpose,
      component,
      quantity: (line?.quantity ?? 0) + quantity,
      ...(made !== undefined && { made }),
      places: before.includes(place) ? before : [...before, place],
    });
  }
  return [...lines.values()];
}

export interface ShortPanel {
  readonly panel: string;
  readonly needed: number;
  readonly short: number;
}

/** Of the panels that are short, how many all gangs together need. */
export function shortPanels({
  short,
  gangs,
  designs,
}: Pick<Proposal, 'short' | 'gangs' | 'designs'>): readonly ShortPanel[] {
  const standing = (code: string): number =>
    gangs.length > 0 ? gangs.filter(({ design }) => design === code).length : designs.length === 1 ? 2 : 1;
  const needed = new Map<string, number>();
  for (const { code, geometry } of designs)
    for (const { panel } of geometry.panels) needed.set(panel, (needed.get(panel) ?? 0) + standing(code));
  return Object.entries(short).map(([panel, count]) => ({
    panel,
    needed: needed.get(panel) ?? count,
    short: count,
  }));
}
