// A choice of this person on this machine, kept between starts: units, theme. Never data of a job.
import { useCallback, useState } from 'react';

export function useRemembered<T extends string>(
  name: string,
  allowed: readonly T[],
  otherwise: T,
): [T, (value: T) => void] {
  const [value, setValue] = useState<T>(() => {
    const kept = read(name);
    return allowed.find((one) => one === kept) ?? otherwise;
  });
  const set = useCallback(
    (next: T) => {
      setValue(next);
      write(name, next);
    },
    [name],
  );
  return [value, set];
}

/** Words that somebody types again and again. */
export function useRememberedText(name: string): [string, (value: string) => void] {
  const [value, setValue] = useState(() => read(name) ?? '');
  const set = useCallback(
    (next: string) => {
      setValue(next);
      write(name, next);
    },
    [name],
  );
  return [value, set];
}

// A page may be denied storage; then a choice lasts until the window closes.
function read(name: string): string | null {
  try {
    return localStorage.getItem(`regang.${name}`);
  } catch {
    return null;
  }
}

function write(name: string, value: string): void {
  try {
    localStorage.setItem(`regang.${name}`, value);
  } catch {
    // Nothing to do: the choice holds for this page.
  }
}
