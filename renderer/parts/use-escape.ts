// Escape closes the pane at the side, unless something that lies over it or a field has taken the key.
import { isField } from './undo.tsx';
import { useWindowKeys } from './window-keys.ts';

export function useEscape(close: () => void): void {
  useWindowKeys((event) => {
    if (event.key !== 'Escape' || event.defaultPrevented || isField(event.target)) return;
    event.preventDefault();
    close();
  });
}
