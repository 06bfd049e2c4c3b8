// Keys in the lines of a note: up and down go to the same column of the next line, Enter too, and from the last line
// it begins another.
import type { KeyboardEvent } from 'react';

/** @param onAdd begins another line; its first field takes the focus by itself */
export function lineKeys(event: KeyboardEvent<HTMLElement>, onAdd: () => void): void {
  const { target, key, currentTarget } = event;
  if (!(target instanceof HTMLInputElement) || event.defaultPrevented) return;
  const column = target.dataset['column'];
  if (column === undefined) return;
  const step = key === 'ArrowDown' || key === 'Enter' ? 1 : key === 'ArrowUp' ? -1 : 0;
  if (step === 0) return;
  event.preventDefault();
  const cells = [...currentTarget.querySelectorAll<HTMLInputElement>(`input[data-column="${column}"]`)];
  const next = cells[cells.indexOf(target) + step];
  if (next !== undefined) {
    next.focus();
    next.select();
  } else if (key === 'Enter') onAdd();
}
