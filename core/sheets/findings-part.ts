// What the rules find, on paper: stops first and in a frame, never left out and never shortened.
import type { Finding, Place } from '../gang/findings.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { of, type SheetElement, type SheetNode } from './node.ts';

export interface NumberedFinding {
  readonly number: number;
  readonly finding: Finding;
}

const order = ['stop', 'caution', 'note'] as const;

/** Stops, then cautions, then notes, numbered as they stand in the list and on the drawing. */
export function numberedFindings(findings: readonly Finding[]): readonly NumberedFinding[] {
  return order
    .flatMap((severity) => findings.filter((finding) => finding.severity === severity))
    .map((finding, index) => ({ number: index + 1, finding }));
}

/** `not` is what a stop forbids: to be built, or picked. */
export function findingsPart(
  findings: readonly NumberedFinding[],
  units: SheetUnits,
  not: 'built' | 'picked',
): SheetElement {
  const stops = findings.filter(({ finding }) => finding.severity === 'stop').length;
  return of(
    'section',
    stops > 0 ? 'part findings has-stops' : 'part findings',
    of('h2', 'part-name', stops > 0 ? `Findings: ${stops} for which it is not to be ${not} so` : 'Findings'),
    findings.length === 0
      ? of('p', 'plain', 'Nothing is found by what is entered. That is not all that can be wrong.')
      : of('ul', 'finding-list', ...findings.map((one) => line(one, units))),
  );
}

function line({ number, finding }: NumberedFinding, units: SheetUnits): SheetNode {
  const { severity, message, where, source } = finding;
  const place = where === undefined ? '' : placeWords(where, units);
  return of(
    'li',
    `finding finding-${severity}`,
    of('span', 'finding-number', String(number)),
    of('strong', 'finding-word', severity),
    of(
      'span',
      'finding-words',
      message,
      ...(place === '' ? [] : [of('span', 'soft', ` At ${place}.`)]),
      ...(source === undefined ? [] : [of('span', 'soft', ` Source: ${source}.`)]),
    ),
  );
}

/** "3'-0" along, 8'-0" up" from the lower left corner, or the place in the words of the rule. */
export function placeWords(where: Place, units: SheetUnits): string {
  if (typeof where === 'string') return where;
  return `${units.length(where.xNm)} along, ${units.length(where.yNm)} up`;
}
