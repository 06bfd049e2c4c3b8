// The panel systems of a book: which components belong to one, and which rule tables are in force.
import { type Answer, refuse } from '../answer.ts';
import type { BookComponent, RuleVersion } from './book.ts';
import { type PanelSystem, panelSystem } from '../catalogue/system.ts';

/** The components of a system, and those that belong to none and so serve in all. */
export function catalogueOf(components: readonly BookComponent[], system: string): readonly BookComponent[] {
  return components.filter((component) => component.system === null || component.system === system);
}

/** The catalogue with some components changed or added, in the book's order: by code. */
export function changedCatalogue(
  components: readonly BookComponent[],
  changed: readonly BookComponent[],
): readonly BookComponent[] {
  const all = new Map([...components, ...changed].map((each) => [each.code, each]));
  return [...all.values()].sort((one, other) => (one.code < other.code ? -1 : 1));
}

/** The newest rule tables of each system. */
export function rulesInForce(versions: readonly RuleVersion[]): ReadonlyMap<string, RuleVersion> {
  const newest = new Map<string, RuleVersion>();
  for (const version of versions) {
    const known = newest.get(version.system);
    if (known === undefined || known.version < version.version) newest.set(version.system, version);
  }
  return newest;
}

export function systemOf(
  code: string,
  components: readonly BookComponent[],
  rules: ReadonlyMap<string, RuleVersion>,
): Answer<PanelSystem> {
  const version = rules.get(code);
  if (version === undefined) return refuse('unknown-system', `There are no rule tables of a system ${code}.`);
  return panelSystem(catalogueOf(components, code), version.rules);
}

/** The panels and components of a system alone: for what asks about places and not about rules. */
export function catalogueSystem(code: string, components: readonly BookComponent[]): Answer<PanelSystem> {
  return panelSystem(catalogueOf(components, code), {});
}
