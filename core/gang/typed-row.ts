// A design typed as rows: "36 36 24 36 | 8+4" is four widths and the heights of two rows of them, from the
// bottom. Blocks of rows that differ are parted by " / ", the lowest first. Panels are found by their size.
import { type Answer, answer, refuse } from '../answer.ts';
import type { Panel } from '../catalogue/component.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { formatLength, type UnitSystem } from '../units/length.ts';
import type { DesignGeometry } from './design.ts';
import { readRowTokens, type RowBlock, type RowToken } from './row-tokens.ts';

const mostPieces = 2000;

/**
 * The design that a text says, from (0, 0), its edges open. Bare widths are inches or millimetres, bare heights
 * feet or millimetres; any may carry its unit. `3x36` is 36 three times; `f4` a filler; `96s` a panel on its
 * side that is 96 long. Refuses with field 'text' what cannot be read and sizes that the system does not have.
 */
export function typedRow(system: PanelSystem, text: string, units: UnitSystem): Answer<DesignGeometry> {
  const blocks = readRowTokens(text, units);
  if (!blocks.ok) return blocks;
  const pieces = blocks.value.reduce(
    (sum, { widths, heights }) => sum + heights.length * widths.reduce((row, each) => row + each.times, 0),
    0,
  );
  if (pieces > mostPieces)
    return refuse(
      'row-too-many',
      `That is ${pieces} pieces, over the ${mostPieces} that a design may have.`,
      {
        field: 'text',
      },
    );
  const panels: DesignGeometry['panels'] = [];
  const fillers: DesignGeometry['fillers'] = [];
  let yNm = 0;
  for (const block of blocks.value) {
    for (const height of block.heights) {
      const row = rowOf(system, block, height, yNm, units);
      if (!row.ok) return row;
      panels.push(...row.value.panels);
      fillers.push(...row.value.fillers);
      yNm += height.lengthNm;
    }
  }
  return answer({ panels, fillers, edges: { left: 'open', right: 'open' }, equalised: false });
}

function rowOf(
  system: PanelSystem,
  { widths }: RowBlock,
  height: RowToken,
  yNm: number,
  units: UnitSystem,
): Answer<Pick<DesignGeometry, 'panels' | 'fillers'>> {
  const panels: DesignGeometry['panels'] = [];
  const fillers: DesignGeometry['fillers'] = [];
  let xNm = 0;
  for (const token of widths) {
    const onSide = token.kind === 'on-side';
    const panel = token.kind === 'filler' ? undefined : panelFor(system, token, height.lengthNm);
    if (token.kind !== 'filler' && panel === undefined) return noPanel(system, token, height, units);
    for (let time = 0; time < token.times; time++) {
      if (panel === undefined) fillers.push({ xNm, yNm, widthNm: token.lengthNm, heightNm: height.lengthNm });
      else panels.push({ panel: panel.code, xNm, yNm, onSide });
      xNm += token.lengthNm;
    }
  }
  return answer({ panels, fillers });
}

function panelFor(system: PanelSystem, { kind, lengthNm }: RowToken, heightNm: number): Panel | undefined {
  return system.panels.find((panel) =>
    kind === 'on-side'
      ? panel.heightNm === lengthNm && panel.widthNm === heightNm
      : panel.widthNm === lengthNm && panel.heightNm === heightNm,
  );
}

/** Names the token, its place, and the sizes nearest to it that are there. */
function noPanel(system: PanelSystem, token: RowToken, height: RowToken, units: UnitSystem): Answer<never> {
  const onSide = token.kind === 'on-side';
  const shown = (lengthNm: number): string => formatLength(lengthNm, units);
  const along = (panel: Panel): number => (onSide ? panel.heightNm : panel.widthNm);
  const up = (panel: Panel): number => (onSide ? panel.widthNm : panel.heightNm);
  const ofRow = system.panels.filter((panel) => up(panel) === height.lengthNm);
  const place = `"${token.text}" at character ${token.at + 1}`;
  if (ofRow.length === 0) {
    const heights = nearest(system.panels.map(up), height.lengthNm).map(shown);
    return refuse(
      'row-no-such-height',
      `No panel ${onSide ? 'on its side ' : ''}is ${shown(height.lengthNm)} high, which "${height.text}" at character ${height.at + 1} asks of ${place}.`,
      { field: 'text', ...(heights.length > 0 && { hint: `Maybe a row of ${listed(heights)}.` }) },
    );
  }
  const sizes = nearest(ofRow.map(along), token.lengthNm).map(shown);
  return refuse(
    'row-no-such-panel',
    `${place}: no panel ${onSide ? 'on its side is' : 'is'} ${shown(token.lengthNm)} ${onSide ? 'long' : 'wide'} and ${shown(height.lengthNm)} high.`,
    { field: 'text', hint: `Maybe ${listed(sizes)}; ${shown(token.lengthNm)} of filler is f${token.text}.` },
  );
}

/** The three nearest, each once, rising. */
function nearest(sizes: readonly number[], wanted: number): readonly number[] {
  return [...new Set(sizes)]
    .sort((one, other) => Math.abs(one - wanted) - Math.abs(other - wanted) || one - other)
    .slice(0, 3)
    .sort((one, other) => one - other);
}

function listed(texts: readonly string[]): string {
  const last = texts.at(-1) ?? '';
  return texts.length < 2 ? last : `${texts.slice(0, -1).join(', ')} or ${last}`;
}
