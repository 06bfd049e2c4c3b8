// Every screen has an address behind the #, its query included, so that back, forward and a copied
// link work at every door and the page itself is never loaded again.
import { useSyncExternalStore } from 'react';

const changed = 'regang:address';

function subscribe(listener: () => void): () => void {
  for (const name of ['hashchange', 'popstate', changed]) addEventListener(name, listener);
  return () => {
    for (const name of ['hashchange', 'popstate', changed]) removeEventListener(name, listener);
  };
}

/** "/pours/P07?from=2026-03-02": path and query of this page. */
function current(): string {
  return `/${location.hash.replace(/^#?\/?/u, '')}`;
}

export function go(to: string, options: { readonly replace?: boolean } = {}): void {
  const url = `#${to.startsWith('/') ? to : `/${to}`}`;
  if (options.replace === true) history.replaceState(null, '', url);
  else history.pushState(null, '', url);
  dispatchEvent(new Event(changed));
}

function useAddress(): string {
  return useSyncExternalStore(subscribe, current);
}

function usePath(): [string, typeof go] {
  return [useAddress().split('?')[0] ?? '/', go];
}

function useSearchText(): string {
  return useAddress().split('?')[1] ?? '';
}

/** In the form that the router library takes as its location hook. */
export const hashRouter = {
  hook: Object.assign(usePath, { searchHook: useSearchText, hrefs: (href: string) => `#${href}` }),
};
