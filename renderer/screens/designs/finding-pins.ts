// Findings in the order in which they are numbered on the drawing and listed beside it: stops, cautions,
// notes. Pins that would lie on each other are set side by side.
import type { Finding, PointNm, Severity } from './design-shapes.ts';

export interface NumberedFinding {
  readonly number: number;
  readonly finding: Finding;
}

export interface Pin extends NumberedFinding {
  readonly point: PointNm;
  /** 0 for the first pin at a point, 1 for the next beside it. */
  readonly beside: number;
}

const order: readonly Severity[] = ['stop', 'caution', 'note'];

export function numbered(findings: readonly Finding[]): NumberedFinding[] {
  return order
    .flatMap((severity) => findings.filter((finding) => finding.severity === severity))
    .map((finding, index) => ({ number: index + 1, finding }));
}

/** Pins of the findings that have a place on the drawing. */
export function pins(findings: readonly NumberedFinding[]): Pin[] {
  const taken = new Map<string, number>();
  return findings.flatMap(({ number, finding }) => {
    const { where } = finding;
    if (where === undefined || typeof where === 'string') return [];
    const key = `${where.xNm} ${where.yNm}`;
    const beside = taken.get(key) ?? 0;
    taken.set(key, beside + 1);
    return [{ number, finding, point: where, beside }];
  });
}
