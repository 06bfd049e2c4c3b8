// The pieces of a gang to be ticked as they are fetched, in catalogue order, with what they weigh.
import type { DrawnGang, SheetUnits } from './drawn-gang.ts';
import { el, of, type SheetElement, type SheetNode } from './node.ts';

export function piecesPart(gang: DrawnGang, units: SheetUnits): SheetElement {
  const hooks = gang.lines.filter(({ kind }) => kind === 'hook');
  const rest = gang.lines.filter(({ kind }) => kind !== 'hook');
  const [count, grams] = sum(rest);
  const [all, allGrams] = sum(gang.lines);
  return of(
    'section',
    'part pieces',
    of('h2', 'part-name', 'Pieces'),
    of(
      'table',
      'lines',
      el('thead', {}, row('th', ['', 'pieces', 'component', '', 'each', 'together'])),
      el(
        'tbody',
        {},
        ...[...rest, ...hooks].map(({ component, name, quantity, weightGrams }) =>
          row('td', [
            tick(),
            String(quantity),
            component,
            name,
            units.weight(weightGrams / quantity),
            units.weight(weightGrams),
          ]),
        ),
      ),
      el(
        'tfoot',
        {},
        row('td', ['', String(count), '', 'without hooks', '', units.weight(grams)]),
        ...(hooks.length === 0
          ? []
          : [row('td', ['', String(all), '', 'with hooks', '', units.weight(allGrams)])]),
      ),
    ),
    ...(gang.fillers.length === 0 ? [] : [cutFillers(gang, units)]),
    of(
      'p',
      'soft',
      'Weights are those entered in the catalogue. Fillers, timber and what is nailed on are not in them.',
    ),
  );
}

function sum(lines: DrawnGang['lines']): readonly [quantity: number, grams: number] {
  return lines.reduce(([count, grams], line) => [count + line.quantity, grams + line.weightGrams], [0, 0]);
}

function cutFillers({ fillers }: DrawnGang, units: SheetUnits): SheetElement {
  const sizes = new Map<string, number>();
  for (const { widthNm, heightNm } of fillers) {
    const size = `${units.length(widthNm)} × ${units.length(heightNm)}`;
    sizes.set(size, (sizes.get(size) ?? 0) + 1);
  }
  const words = [...sizes].map(([size, count]) =>
    of('li', 'tick-line', tick(), `${count} filler ${size}, cut to size`),
  );
  return of('ul', 'ticks', ...words);
}

export function tick(): SheetElement {
  return el('span', { class: 'tick', role: 'img', 'aria-label': 'to be ticked' });
}

/** Classes c1, c2 ... by column, so that the style can set figures to the right. */
export function row(tag: 'th' | 'td', cells: readonly SheetNode[]): SheetElement {
  return el(
    'tr',
    {},
    ...cells.map((cell, index) =>
      el(tag, { class: `c${index + 1}`, ...(tag === 'th' && { scope: 'col' }) }, cell),
    ),
  );
}
