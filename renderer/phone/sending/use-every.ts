// Asks the door again and again while a screen is open.
import { useEffect } from 'react';

/** @param ask must stay the same from drawing to drawing, or it begins anew */
export function useEvery(ask: () => void, everyMs: number): void {
  useEffect(() => {
    ask();
    const timer = setInterval(ask, everyMs);
    return () => clearInterval(timer);
  }, [ask, everyMs]);
}
