// A cell of a table whose words are cut off says all of them where the pointer rests on it.
import { type RefObject, useEffect } from 'react';

export function useWholeWords(table: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const watched = table.current;
    if (watched === null) return undefined;
    const say = (event: Event): void => {
      const cell = event.target instanceof Element ? event.target.closest('td') : null;
      if (cell === null) return;
      if (cell.scrollWidth > cell.clientWidth) cell.title = cell.textContent;
      else cell.removeAttribute('title');
    };
    watched.addEventListener('mouseover', say);
    return () => watched.removeEventListener('mouseover', say);
  }, [table]);
}
