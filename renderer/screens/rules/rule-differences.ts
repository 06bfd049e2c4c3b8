// Two states of a system's rule tables held against each other, number by number, in words.
import type { RuleTables } from '../../../core/catalogue/rules.ts';
import type { UnitSystem } from '../../../core/units/length.ts';
import { tableForms } from './all-forms.ts';
import { printValue } from './cell-kinds.ts';
import { draftOfRules } from './rules-draft.ts';

export interface RuleDifference {
  readonly where: string;
  /** '' where there was nothing. */
  readonly before: string;
  readonly after: string;
}

interface Said {
  readonly where: string;
  readonly text: string;
}

export function ruleDifferences(
  before: RuleTables,
  after: RuleTables,
  system: UnitSystem,
): readonly RuleDifference[] {
  const [old, now] = [allSaid(before, system), allSaid(after, system)];
  return [...new Set([...old.keys(), ...now.keys()])]
    .map((key) => ({
      where: now.get(key)?.where ?? old.get(key)?.where ?? key,
      before: old.get(key)?.text ?? '',
      after: now.get(key)?.text ?? '',
    }))
    .filter((one) => one.before !== one.after);
}

/** Everything that rule tables say, by where it stands; rows by their first column, so that one put between
    others does not change those after it. */
function allSaid(rules: RuleTables, system: UnitSystem): ReadonlyMap<string, Said> {
  const { cells, rows, sources } = draftOfRules(rules, 0);
  const said = new Map<string, Said>();
  const names = new Map<string, string>();
  for (const form of tableForms) {
    names.set(form.name, form.words);
    for (const { place, words, kind } of form.fields) {
      const where = `${form.words}: ${words}`;
      names.set(place, where);
      const value = cells[place]?.kept;
      if (value !== undefined) said.set(place, { where, text: printValue(kind, value, system) });
    }
    for (const { place, columns } of form.rows) {
      const [first, ...others] = columns;
      for (const row of rows[place] ?? []) {
        if (first === undefined) continue;
        const limit = row.cells[first.name]?.kept;
        const text = others.map(({ name, kind }) => printValue(kind, row.cells[name]?.kept, system));
        const where = `${form.words}: ${first.words} ${printValue(first.kind, limit, system)}`;
        said.set(`${place} ${String(limit)}`, { where, text: text.join(', ') });
        if (row.source !== '')
          said.set(`source ${place} ${String(limit)}`, { where: `Source of ${where}`, text: row.source });
      }
    }
  }
  for (const [place, words] of Object.entries(sources))
    said.set(`source ${place}`, { where: `Source of ${names.get(place) ?? place}`, text: words });
  return said;
}
