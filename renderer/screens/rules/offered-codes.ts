// Components that a rule may name, from the catalogue as it is being written.
import type { ComponentKind } from '../../../core/catalogue/component.ts';
import { catalogueColumns } from './catalogue-draft.ts';
import { readValue, type Word } from './cell-kinds.ts';
import { codeOf } from './problem-places.ts';
import { cellText, type RulesDraft } from './rules-draft.ts';

/** Code and name of those of the kinds; null for all. */
export function codesFor(draft: RulesDraft, kinds: readonly ComponentKind[] | null): readonly Word[] {
  return draft.catalogue.flatMap((row): readonly Word[] => {
    const code = codeOf(row);
    if (code === '') return [];
    if (kinds !== null && !kinds.some((kind) => kind === kindOf(row))) return [];
    return [[code, cellText(row.cells['name'], { as: 'text' }, 'metric')]];
  });
}

function kindOf(row: RulesDraft['catalogue'][number]): unknown {
  const cell = row.cells['kind'];
  const kind = catalogueColumns.find(({ name }) => name === 'kind')?.kind;
  if (cell?.typed === undefined || kind === undefined) return cell?.kept;
  const read = readValue(kind, cell.typed);
  return read.ok ? read.value : undefined;
}
