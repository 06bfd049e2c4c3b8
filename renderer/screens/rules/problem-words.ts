// A problem as this screen says it: the core names places as files write them and lengths in millimetres; here
// stand the words of the table and the units of whoever reads.
import { formatLength, parseLength, type UnitSystem } from '../../../core/units/length.ts';
import { tableForms } from './all-forms.ts';
import type { Problem } from './rules-draft.ts';

export function inWords(problem: Problem, system: UnitSystem): Problem {
  const said = (text: string): string => lengthsIn(placesIn(text), system);
  return {
    ...problem,
    message: said(problem.message),
    ...(problem.hint === undefined ? {} : { hint: said(problem.hint) }),
  };
}

function placesIn(text: string): string {
  const told = text.replaceAll(
    /\b[a-zA-Z]+(?:\.[\w-]+(?:\[\d+\])?)+/gu,
    (place) => wordsOfPlace(place) ?? place,
  );
  return tableForms
    .filter(({ name }) => /[A-Z]/u.test(name))
    .reduce((so, { name, words }) => so.replaceAll(new RegExp(`\\b${name}\\b`, 'gu'), `"${words}"`), told);
}

function wordsOfPlace(place: string): string | undefined {
  for (const { fields, rows } of tableForms) {
    const field = fields.find((each) => each.place === place);
    if (field !== undefined) return `"${field.words}"`;
    for (const each of rows) {
      if (place === each.place) return `"${each.words}"`;
      if (!place.startsWith(`${each.place}[`)) continue;
      const [, index, name] = /^\[(\d+)\]\.?(.*)$/u.exec(place.slice(each.place.length)) ?? [];
      const column = each.columns.find((one) => one.name === name);
      return column === undefined
        ? `row ${Number(index) + 1}`
        : `"${column.words}" in row ${Number(index) + 1}`;
    }
  }
  return undefined;
}

function lengthsIn(text: string, system: UnitSystem): string {
  return text.replaceAll(/-?\d+(?:\.\d+)? mm\b/gu, (length) => {
    const read = parseLength(length);
    return read.ok ? formatLength(read.value, system) : length;
  });
}
