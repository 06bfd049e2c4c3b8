// A panel system: the panels and components that belong together and the rule tables that take them off.
import { type Answer, answer, refuse } from '../answer.ts';
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
 * Makes a system from a catalogue in its order. Refuses a repeated code, a weight or size that cannot be, a
 * panel without a size, and rule tables that make no sense (check-rules.ts), each with its place.
 */
export function panelSystem(catalogue: readonly Component[], rules: RuleTables): Answer<PanelSystem> {
  const seen = new Set<string>();
  const panels: Panel[] = [];
  const components: Component[] = [];
  for (const item of catalogue) {
    const field = `components.${item.code}`;
    if (seen.has(item.code)) {
      return refuse('code-repeated', `The code ${item.code} stands in the catalogue twice.`, { field });
    }
    seen.add(item.code);
    if (item.weightGrams < 0)
      return refuse('weight-negative', `${item.code} has a negative weight.`, { field });
    if (item.kind !== 'panel') {
      components.push(item);
      continue;
    }
    const panel = panelOf(item, field);
    if (!panel.ok) return panel;
    panels.push(panel.value);
  }
  const checked = checkRules(rules, catalogue);
  return checked.ok ? answer({ panels, components, rules }) : checked;
}

function panelOf(item: Component, field: string): Answer<Panel> {
  const { widthNm = 0, heightNm = 0, crossMembersNm = [], tieHolesNm = [] } = item;
  if (widthNm <= 0 || heightNm <= 0) {
    return refuse('panel-without-size', `The panel ${item.code} needs a width and a height over zero.`, {
      field,
    });
  }
  const member = crossMembersNm.find((at) => at < 0 || at > heightNm);
  if (member !== undefined) {
    const shown = formatLengthMetric(member);
    return refuse(
      'cross-member-outside',
      `The panel ${item.code} has a cross member at ${shown}, outside its height.`,
      {
        field: `${field}.crossMembers`,
      },
    );
  }
  const hole = tieHolesNm.find(([x, y]) => x < 0 || x > widthNm || y < 0 || y > heightNm);
  if (hole !== undefined) {
    const shown = hole.map(formatLengthMetric).join(', ');
    return refuse(
      'tie-hole-outside',
      `The panel ${item.code} has a tie hole at ${shown}, outside its sheet.`,
      {
        field: `${field}.tieHoles`,
      },
    );
  }
  return answer({ ...item, kind: 'panel', widthNm, heightNm });
}
