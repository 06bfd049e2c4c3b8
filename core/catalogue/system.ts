// A panel system: the panels and components that belong together and the rule tables that take them off.
import { type Answer, answer, refuse, type Refusal } from '../answer.ts';
import { formatLengthMetric } from '../units/length.ts';
import { checkRules } from './check-rules.ts';
import type { Component, Panel } from './component.ts';
import type { RuleTables } from './rules.ts';

export interface PanelSystem {
  /** In catalogue order, which settles ties. */
  readonly panels: readonly Panel[];
  /** Everything that is no panel, in catalogue order. */
  readonly components: readonly Component[];
  readonly rules: RuleTables;
}

/**
 * Makes a system from a catalogue in its order. Refuses a repeated code, a weight, size or pressure that cannot be,
 * a panel without a size, and rule tables that make no sense (check-rules.ts), each with its place.
 */
export function panelSystem(catalogue: readonly Component[], rules: RuleTables): Answer<PanelSystem> {
  const [first] = catalogueProblems(catalogue);
  if (first !== undefined) return { ok: false, error: first };
  const panels: Panel[] = [];
  const components: Component[] = [];
  for (const item of catalogue) {
    const { kind, widthNm, heightNm } = item;
    if (kind === 'panel' && widthNm !== undefined && heightNm !== undefined)
      panels.push({ ...item, kind, widthNm, heightNm });
    else components.push(item);
  }
  const checked = checkRules(rules, catalogue);
  return checked.ok ? answer({ panels, components, rules }) : checked;
}

/** Everything in a catalogue that cannot be, in its order; a code that stands twice at the second. */
export function catalogueProblems(catalogue: readonly Component[]): readonly Refusal[] {
  const seen = new Set<string>();
  return catalogue.flatMap((item): readonly Refusal[] => {
    const field = `components.${item.code}`;
    if (seen.has(item.code)) {
      const message = `The code ${item.code} stands in the catalogue twice.`;
      return [refuse('code-repeated', message, { field }).error];
    }
    seen.add(item.code);
    if (item.weightGrams < 0)
      return [refuse('weight-negative', `${item.code} has a negative weight.`, { field }).error];
    return [...pressureProblems(item, field), ...(item.kind === 'panel' ? panelProblems(item, field) : [])];
  });
}

function pressureProblems(
  { code, pressurePa, pressureOnSidePa }: Component,
  field: string,
): readonly Refusal[] {
  const figures = [
    ['pressure', pressurePa],
    ['pressureOnSide', pressureOnSidePa],
  ] as const;
  return figures.flatMap(([key, pa]) => {
    if (pa === undefined || pa > 0) return [];
    const message = `${code} has a permitted pressure of ${pa} Pa, it must be over zero.`;
    return [refuse('pressure-not-positive', message, { field: `${field}.${key}` }).error];
  });
}

function panelProblems(item: Component, field: string): readonly Refusal[] {
  const { widthNm = 0, heightNm = 0, crossMembersNm = [], tieHolesNm = [] } = item;
  if (widthNm <= 0 || heightNm <= 0) {
    const message = `The panel ${item.code} needs a width and a height over zero.`;
    return [refuse('panel-without-size', message, { field }).error];
  }
  const problems: Refusal[] = [];
  const member = crossMembersNm.find((at) => at < 0 || at > heightNm);
  if (member !== undefined) {
    const message = `The panel ${item.code} has a cross member at ${formatLengthMetric(member)}, outside its height.`;
    problems.push(refuse('cross-member-outside', message, { field: `${field}.crossMembers` }).error);
  }
  const hole = tieHolesNm.find(([x, y]) => x < 0 || x > widthNm || y < 0 || y > heightNm);
  if (hole !== undefined) {
    const shown = hole.map(formatLengthMetric).join(', ');
    const message = `The panel ${item.code} has a tie hole at ${shown}, outside its sheet.`;
    problems.push(refuse('tie-hole-outside', message, { field: `${field}.tieHoles` }).error);
  }
  return problems;
}
