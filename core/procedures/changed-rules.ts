// Rule tables and components as they were changed on screen, held against the book: everything that makes no
// sense, and what each design would be made of by them. A system that no design can be taken off by is never kept.
import type { Refusal } from '../answer.ts';
import type { BookComponent, BookReader, Design, RuleVersion } from '../book/book.ts';
import { catalogueOf, changedCatalogue, rulesInForce, systemOf } from '../book/systems.ts';
import { checkRules } from '../catalogue/check-rules.ts';
import type { RuleTables } from '../catalogue/rules.ts';
import { panelSystem } from '../catalogue/system.ts';
import { takeOff, type TakeOff } from '../gang/take-off.ts';
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
  const problems = [
    ...entered.components.flatMap(componentProblems),
    ...rulesProblems(entered.rules, catalogueOf(components, entered.system)),
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

function rulesProblems(rules: RuleTables, components: readonly BookComponent[]): readonly Refusal[] {
  const checked = checkRules(rules, components);
  return checked.ok ? [] : [checked.error];
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

/** Whatever a component cannot be, by itself. */
function componentProblems(component: BookComponent): readonly Refusal[] {
  const field = `components.${component.code}`;
  const problems: Refusal[] = [];
  const checked = panelSystem([component], {});
  if (!checked.ok) problems.push(checked.error);
  if (component.weightGrams === 0)
    problems.push({
      code: 'weight-zero',
      message: `${component.code} weighs nothing: every gang with it would be counted too light.`,
      field: `${field}.weight`,
    });
  const sizes = [
    ['width', component.widthNm],
    ['height', component.heightNm],
    ['length', component.lengthNm],
    ['pressure', component.pressurePa],
    ['pressureOnSide', component.pressureOnSidePa],
  ] as const;
  for (const [name, size] of sizes)
    if (size !== undefined && size <= 0 && !problems.some((each) => each.code === 'panel-without-size'))
      problems.push({
        code: 'size-not-positive',
        message: `The ${name} of ${component.code} must be over zero.`,
        field: `${field}.${name}`,
      });
  if (component.hirePerDayCents !== null && component.hirePerDayCents < 0)
    problems.push({
      code: 'hire-negative',
      message: `The hire of ${component.code} cannot be negative.`,
      field: `${field}.hirePerDay`,
    });
  return problems;
}
