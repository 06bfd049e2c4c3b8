// Sources that belong to no number would never be shown: those of no table, and those of a place that the table
// does not fill.
import { refuse, type Refusal } from '../answer.ts';
import { furtherRuleNames, ruleNames, type RuleTables } from './rules.ts';

export function strayTables(rules: RuleTables): readonly Refusal[] {
  const names: readonly string[] = [...ruleNames, ...furtherRuleNames];
  return Object.keys(rules.sources ?? {})
    .filter((place) => !names.some((name) => place === name || place.startsWith(`${name}.`)))
    .map(stray);
}

/** Also a place within a table that is not there, or of a row that the table does not have. */
export function strayPlaces(rules: RuleTables): readonly Refusal[] {
  return Object.keys(rules.sources ?? {})
    .filter((place) => !isFilled(rules, partsOf(place)))
    .map(stray);
}

function stray(place: string): Refusal {
  const message = `A source is given for ${place}, which is no number of a rule table.`;
  return refuse('rule-source-stray', message, { field: `sources.${place}` }).error;
}

function partsOf(place: string): readonly string[] {
  return place.replaceAll(/\[(\d+)\]/gu, '.$1').split('.');
}

/** Places are written without units: `maximumSpacing` stands for `maximumSpacingNm`, `capacityKg` for grams. */
function isFilled(value: unknown, [part, ...rest]: readonly string[]): boolean {
  if (part === undefined) return value !== undefined;
  if (typeof value !== 'object' || value === null) return false;
  const held: Readonly<Record<string, unknown>> = { ...value };
  const key = [part, `${part}Nm`, part.replace(/Kg$/u, 'Grams')].find((each) => Object.hasOwn(held, each));
  return key !== undefined && isFilled(held[key], rest);
}
