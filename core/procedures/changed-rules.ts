// Rule tables and components as they were changed on screen, held against the book: everything that makes no
// sense, and what each design would be made of by them. A system that no design can be taken off by is never kept.
import type { Refusal } from '../answer.ts';
import type { BookComponent, BookReader, Design, RuleVersion } from '../book/book.ts';
import { catalogueOf, changedCatalogue, rulesInForce, systemOf } from '../book/systems.ts';
import { rulesProblems } from '../catalogue/check-rules.ts';
import type { RuleTables } from '../catalogue/rules.ts';
import { takeOff, type TakeOff } from '../gang/take-off.ts';
import { changedProblems } from './changed-components.ts';
import { designChange, type DesignChange } from './design-change.ts';

export interface EnteredRules {
  readonly system: string;
  readonly rules: RuleTables;
  /** Changed or new ones. */
  readonly components: readonly BookComponent[];
}

export interface ChangedRules {
  readonly problems: readonly Refusal[];
  /** Designs that are made of something else or have other findings by them; empty while there are problems. */
  readonly changes: readonly DesignChange[];
  /** Designs that were looked at and stay as they are. */
  readonly unchanged: number;
}

export async function checkChangedRules(book: BookReader, entered: EnteredRules): Promise<ChangedRules> {
  const [stored, versions, designs] = await Promise.all([
    book.components(),
    book.ruleVersions(),
    book.designs(),
  ]);
  const components = changedCatalogue(stored, entered.components);
  const before = rulesInForce(versions);
  const after = new Map([...before, [entered.system, versionOf(entered)] as const]);
  const ofComponents = changedProblems(entered.system, entered.components, stored);
  const named = new Set(ofComponents.map((each) => each.field));
  const problems = [
    ...ofComponents,
    ...rulesProblems(entered.rules, catalogueOf(components, entered.system)).filter(
      ({ field }) => field === undefined || !named.has(field),
    ),
  ];
  if (problems.length > 0) return { problems, changes: [], unchanged: 0 };
  // Components of no system serve in all, and one may have been moved from another system.
  const touched =
    entered.components.length > 0 ? designs : designs.filter((each) => each.system === entered.system);
  const changes: DesignChange[] = [];
  for (const design of touched) {
    const now = takenOff(design, components, after);
    if ('refused' in now) {
      problems.push(now.refused);
      continue;
    }
    const was = takenOff(design, stored, before);
    const change = designChange(design, 'refused' in was ? null : was, now);
    if (change !== null) changes.push(change);
  }
  for (const [system] of after) problems.push(...systemProblems(system, components, after, problems));
  if (problems.length > 0) return { problems, changes: [], unchanged: 0 };
  return { problems, changes, unchanged: touched.length - changes.length };
}

function versionOf({ system, rules }: EnteredRules): RuleVersion {
  return { system, systemName: system, version: 0, rules };
}

function takenOff(
  design: Design,
  components: readonly BookComponent[],
  rules: ReadonlyMap<string, RuleVersion>,
): TakeOff | { readonly refused: Refusal } {
  const system = systemOf(design.system, components, rules);
  const taken = system.ok ? takeOff(system.value, design.geometry) : system;
  if (taken.ok) return taken.value;
  return { refused: { ...taken.error, message: `Design ${design.code}: ${taken.error.message}` } };
}

/** Systems without designs are held against the changed catalogue too. */
function systemProblems(
  system: string,
  components: readonly BookComponent[],
  rules: ReadonlyMap<string, RuleVersion>,
  told: readonly Refusal[],
): readonly Refusal[] {
  const checked = systemOf(system, components, rules);
  if (checked.ok || told.some((each) => each.message.endsWith(checked.error.message))) return [];
  return [{ ...checked.error, message: `System ${system}: ${checked.error.message}` }];
}
