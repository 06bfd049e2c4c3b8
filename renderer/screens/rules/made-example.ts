// An example where a system has no design yet: a row of its tallest panels, widest first, to see its tables at
// work. It is never kept.
import type { DesignGeometry } from '../../../core/gang/design.ts';
import { componentKinds } from '../../../core/catalogue/component.ts';
import { readValue } from './cell-kinds.ts';
import { codeOf } from './problem-places.ts';
import type { RulesDraft } from './rules-draft.ts';
import type { Cell } from './rules-draft.ts';

const most = 4;

export function madeExample(draft: RulesDraft): DesignGeometry | null {
  const panels = draft.catalogue.flatMap((row) => {
    const kind = wordOf(row.cells['kind']);
    const [widthNm, heightNm] = [lengthOf(row.cells['width']), lengthOf(row.cells['height'])];
    const isPanel = kind === componentKinds[0];
    return isPanel && widthNm > 0 && heightNm > 0 ? [{ code: codeOf(row), widthNm, heightNm }] : [];
  });
  const heightNm = Math.max(...panels.map((panel) => panel.heightNm));
  const row = panels
    .filter((panel) => panel.heightNm === heightNm)
    .sort((one, other) => other.widthNm - one.widthNm)
    .slice(0, most);
  if (row.length === 0) return null;
  let xNm = 0;
  return {
    // One panel alone has no joint: it stands twice.
    panels: (row.length === 1 ? [...row, ...row] : row).map(({ code, widthNm }) => {
      const at = xNm;
      xNm += widthNm;
      return { panel: code, xNm: at, yNm: 0, onSide: false };
    }),
    fillers: [],
    edges: { left: 'open', right: 'open' },
    equalised: false,
  };
}

function wordOf(cell: Cell | undefined): unknown {
  return cell?.typed === undefined ? cell?.kept : cell.typed.trim().toLowerCase();
}

function lengthOf(cell: Cell | undefined): number {
  if (cell?.typed === undefined) return Number(cell?.kept ?? 0);
  const read = readValue({ as: 'length' }, cell.typed);
  return read.ok ? Number(read.value ?? 0) : 0;
}
