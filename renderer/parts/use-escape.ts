// Escape closes the pane at the side, unless something that lies over it or a field has taken the key.
import { useEffect } from 'react';
import { isField } from './undo.tsx';

/** @param close the same function between renders */
export function useEscape(close: () => void): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || event.defaultPrevented || isField(event.target)) return;
      event.preventDefault();
      close();
    };
    addEventListener('keydown', pressed);
    return () => removeEventListener('keydown', pressed);
  }, [close]);
}
