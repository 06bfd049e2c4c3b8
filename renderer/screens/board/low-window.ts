// Whether the window is low: then what stands under the days gives way to the rows above. Paper is never low.
import { useSyncExternalStore } from 'react';
import { useIsPrinting } from '../../parts/printing.ts';

const low = '(max-height: 799px)';

export function useIsLow(): boolean {
  const isLow = useSyncExternalStore(subscribe, () => matchMedia(low).matches);
  const isPrinting = useIsPrinting();
  return isLow && !isPrinting;
}

function subscribe(listener: () => void): () => void {
  const media = matchMedia(low);
  media.addEventListener('change', listener);
  return () => media.removeEventListener('change', listener);
}
