// What a crane carries at a radius, by its chart. Between two radii of the chart the smaller of both values
// counts; outside the chart nothing is known. Lengths in nanometres, weights in grams.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Finding, shown } from '../gang/findings.ts';
import type { Ratio } from '../units/exact.ts';
import { ratioNumber } from '../units/exact.ts';
import { shownWeight } from './shown-weight.ts';

export interface ChartRow {
  readonly radiusNm: number;
  readonly capacityGrams: number;
}

/** The crane at one radius: the chart's value there, and the part of it that the load takes. */
export interface CraneAt {
  readonly name: string;
  readonly radiusNm: number;
  /** Null outside the chart. */
  readonly capacityGrams: number | null;
  readonly share: Ratio | null;
}

/** Refuses `chart-radii` where a radius does not rise over the one before; `fieldOf` names the place of a row. */
export function checkChart(
  chart: readonly ChartRow[],
  fieldOf: (row: number) => string,
): Answer<readonly Finding[]> {
  const findings: Finding[] = [];
  for (const [row, { radiusNm, capacityGrams }] of chart.entries()) {
    const before = chart[row - 1];
    if (before === undefined) continue;
    if (radiusNm <= before.radiusNm) {
      return refuse(
        'chart-radii',
        `Row ${row + 1} of the chart has radius ${shown(radiusNm)} after ${shown(before.radiusNm)}: radii must rise.`,
        { field: fieldOf(row), hint: 'Maybe two rows are exchanged.' },
      );
    }
    if (capacityGrams > before.capacityGrams) {
      findings.push({
        rule: 'crane.chart',
        severity: 'caution',
        message: `The chart carries more at ${shown(radiusNm)} (${shownWeight(capacityGrams)}) than at ${shown(before.radiusNm)} (${shownWeight(before.capacityGrams)}): look whether it was copied rightly.`,
        where: fieldOf(row),
      });
    }
  }
  return answer(findings);
}

/** Grams by the chart, whose radii rise; null outside it. */
export function capacityAt(chart: readonly ChartRow[], radiusNm: number): number | null {
  const next = chart.findIndex((row) => row.radiusNm >= radiusNm);
  const above = chart[next];
  if (above === undefined) return null;
  if (above.radiusNm === radiusNm) return above.capacityGrams;
  const below = chart[next - 1];
  return below === undefined ? null : Math.min(below.capacityGrams, above.capacityGrams);
}

/** `load` in grams with everything that hangs on the crane, at every radius named. */
export function craneAtRadii(
  chart: readonly ChartRow[],
  load: Ratio,
  radii: readonly { readonly name: string; readonly radiusNm: number }[],
): readonly CraneAt[] {
  return radii.map(({ name, radiusNm }) => {
    const capacityGrams = capacityAt(chart, radiusNm);
    const share =
      capacityGrams === null ? null : { over: load.over, under: load.under * BigInt(capacityGrams) };
    return { name, radiusNm, capacityGrams, share };
  });
}

/** The greatest part of the chart's value, null where one radius is outside it. */
export function greatestShare(places: readonly CraneAt[]): number | null {
  let greatest: number | null = null;
  for (const { share } of places) {
    if (share === null) return null;
    greatest = Math.max(greatest ?? 0, ratioNumber(share.over, share.under));
  }
  return greatest;
}

/** A radius outside the chart, and a load over its value, are stops. */
export function craneFindings(
  chart: readonly ChartRow[],
  places: readonly CraneAt[],
  load: Ratio,
): readonly Finding[] {
  const [first, last] = [chart[0], chart.at(-1)];
  return places.flatMap(({ name, radiusNm, capacityGrams, share }): readonly Finding[] => {
    if (capacityGrams === null || share === null) {
      const span =
        first && last ? `from ${shown(first.radiusNm)} to ${shown(last.radiusNm)}` : 'over nothing';
      const message = `${name} ${shown(radiusNm)} is outside the crane's chart, which goes ${span}.`;
      return [{ rule: 'crane.chart', severity: 'stop', message, where: name }];
    }
    if (share.over <= share.under) return [];
    const hangs = shownWeight(Math.ceil(ratioNumber(load.over, load.under)));
    const message = `${hangs} hang on the crane at ${name} ${shown(radiusNm)}, where its chart carries ${shownWeight(capacityGrams)}.`;
    return [{ rule: 'crane.capacity', severity: 'stop', message, where: name }];
  });
}
