// Which problem stands at which cell, and how many a table has. The core names places of components by their
// code; here they are found by the row that has it.
import type { RuleName } from '../../../core/catalogue/rules.ts';
import { tableForms } from './all-forms.ts';
import { catalogueColumns, cataloguePlace, type CatalogueRow } from './catalogue-draft.ts';
import { cellText, givenRows, type Problem, type RulesDraft } from './rules-draft.ts';

/** A field of a refusal as a place of the screen: keys without units, indices in brackets. */
export function placeOfField(field: string): string {
  // The codes of components may have dots and figures of their own.
  if (field.startsWith('components.')) return field;
  return field
    .replace(/^rules\./u, '')
    .replaceAll(/\.(\d+)(?=\.|$)/gu, '[$1]')
    .replaceAll(/(?<=[a-z])Nm(?=$|\.|\[)/gu, '')
    .replace(/^hooks\.capacityGrams$/u, 'hooks.capacityKg');
}

/** Problems of the core at the cells of the screen: components by row and column, rows as they stand there. */
export function placed(problems: readonly Problem[], draft: RulesDraft): readonly Problem[] {
  const { catalogue } = draft;
  return problems.map((problem) => {
    const place = rowOnScreen(placeOfField(problem.place), draft);
    const rest = /^components\.(.+)$/u.exec(place)?.[1];
    if (rest === undefined) return { ...problem, place };
    // A code may have dots of its own: the longest that fits is meant.
    const fitting = catalogue
      .map((row) => ({ row, code: codeOf(row) }))
      .filter(({ code }) => code !== '' && (rest === code || rest.startsWith(`${code}.`)))
      .sort((one, other) => other.code.length - one.code.length)[0];
    if (fitting === undefined) return { ...problem, place };
    const part = rest.slice(fitting.code.length + 1).split(/[.[]/u)[0] ?? '';
    const column = catalogueColumns.find(({ name }) => name === part)?.name ?? 'code';
    return { ...problem, place: cataloguePlace(fitting.row.id, column) };
  });
}

function rowOnScreen(place: string, draft: RulesDraft): string {
  const [, start = '', index = '', end = ''] = /^([^[]+)\[(\d+)\](.*)$/u.exec(place) ?? [];
  const form = tableForms.flatMap(({ rows }) => rows).find((rows) => rows.place === start);
  const given = form === undefined ? undefined : givenRows(draft, form)[Number(index)];
  return given === undefined ? place : `${start}[${given.index}]${end}`;
}

export function codeOf(row: CatalogueRow): string {
  return cellText(row.cells['code'], { as: 'text' }, 'metric').trim();
}

export function problemsOf(problems: readonly Problem[], name: RuleName | 'components'): readonly Problem[] {
  return problems.filter(({ place }) =>
    name === 'components'
      ? /^components[.#[]?/u.test(place)
      : place === name || place.startsWith(`${name}.`) || place.startsWith(`sources.${name}`),
  );
}

/** Those of a table that stand at none of its cells. */
export function problemsAtNoCell(
  problems: readonly Problem[],
  cells: ReadonlySet<string>,
): readonly Problem[] {
  return problems.filter(({ place }) => !cells.has(place));
}
