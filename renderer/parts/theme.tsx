// Light or dark: as the system has it, unless somebody chose. The document carries the answer, and every
// colour follows from it in style/tokens.css.
import { createContext, type ReactNode, useContext, useEffect, useMemo, useSyncExternalStore } from 'react';
import { useRemembered } from './remembered.ts';

export type ThemeChoice = 'system' | 'light' | 'dark';

interface Theme {
  readonly choice: ThemeChoice;
  readonly setChoice: (choice: ThemeChoice) => void;
}

const ThemeContext = createContext<Theme>({ choice: 'system', setChoice: () => undefined });
const darkQuery = '(prefers-color-scheme: dark)';

export function useTheme(): Theme {
  return useContext(ThemeContext);
}

function subscribe(listener: () => void): () => void {
  const media = matchMedia(darkQuery);
  media.addEventListener('change', listener);
  return () => media.removeEventListener('change', listener);
}

export function ThemeProvider(props: { readonly children: ReactNode }): ReactNode {
  const [choice, setChoice] = useRemembered<ThemeChoice>('theme', ['system', 'light', 'dark'], 'system');
  const systemDark = useSyncExternalStore(subscribe, () => matchMedia(darkQuery).matches);
  const dark = choice === 'dark' || (choice === 'system' && systemDark);
  useEffect(() => {
    document.documentElement.dataset['theme'] = dark ? 'dark' : 'light';
  }, [dark]);
  const theme = useMemo(() => ({ choice, setChoice }), [choice, setChoice]);
  return <ThemeContext value={theme}>{props.children}</ThemeContext>;
}
