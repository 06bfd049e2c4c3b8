// Keys that speak to the screen as a whole. Heard from the moment the screen is drawn and always with what
// it shows then: a listener set or renewed by a plain effect comes a little later, and a key pressed in
// between would be lost.
import { useEffectEvent, useLayoutEffect } from 'react';

export function useWindowKeys(pressed: (event: KeyboardEvent) => void): void {
  const heard = useEffectEvent(pressed);
  useLayoutEffect(() => {
    const listener = (event: KeyboardEvent): void => heard(event);
    addEventListener('keydown', listener);
    return () => removeEventListener('keydown', listener);
  }, []);
}
