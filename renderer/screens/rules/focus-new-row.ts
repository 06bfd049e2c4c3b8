// A row that was just added is written next: its first cell takes the focus as soon as it is drawn.
export function focusNewRow(around: Element | null, at: number): void {
  requestAnimationFrame(() => {
    const row = around?.querySelectorAll('tbody tr')[at];
    row?.querySelector<HTMLElement>('td')?.focus();
  });
}
