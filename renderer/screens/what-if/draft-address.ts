// Changes that are being tried stand in the address, so that they are there again on the way back.
import type { PlanChange } from '../../parts/changes/change-text.ts';

const most = 60;

/** What cannot be read is no change: the core checks what is asked. */
export function draftOf(text: string | null): readonly PlanChange[] {
  if (text === null) return [];
  try {
    const read: unknown = JSON.parse(text);
    return Array.isArray(read) ? read.filter(isChange).slice(0, most) : [];
  } catch {
    return [];
  }
}

export function draftText(changes: readonly PlanChange[]): string | null {
  return changes.length === 0 ? null : JSON.stringify(changes.slice(0, most));
}

function isChange(value: unknown): value is PlanChange {
  return typeof value === 'object' && value !== null && 'kind' in value && typeof value.kind === 'string';
}

/** Which plan stands on a side: as it is, the changes being tried, or a kept what-if by its id. */
export function sideInput(side: string, draft: readonly PlanChange[]) {
  if (side === 'draft' && draft.length > 0) return { changes: [...draft] };
  return side === 'now' || side === 'draft' ? ('now' as const) : { kept: side };
}
