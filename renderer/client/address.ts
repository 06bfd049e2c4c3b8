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

/** Told of a way to another screen while something here is not saved; `leave` goes there after all. */
type Asks = (leave: () => void) => void;

let asks: Asks | null = null;
let heldAt = '';

/** Until the answer is called, every way to another path asks first: links, back, forward, the palette. */
export function holdAddress(ask: Asks): () => void {
  asks = ask;
  heldAt = location.hash;
  return () => {
    if (asks === ask) asks = null;
  };
}

function isHeld(hash: string): boolean {
  if (hash.split('?')[0] !== heldAt.split('?')[0]) return asks !== null;
  heldAt = hash;
  return false;
}

// Back, forward and plain links have gone there already when this is heard: the address is put back before
// anything is drawn by it, as this listener is the first.
for (const name of ['popstate', 'hashchange']) {
  addEventListener(name, () => {
    const to = location.hash;
    if (!isHeld(to)) return;
    history.pushState(null, '', heldAt);
    asks?.(() => leaveTo(to));
  });
}

function leaveTo(to: string, options: { readonly replace?: boolean } = {}): void {
  asks = null;
  go(to.replace(/^#/u, ''), options);
}

/** "/pours/P07?from=2026-03-02": path and query of this page. */
function current(): string {
  return `/${location.hash.replace(/^#?\/?/u, '')}`;
}

export function go(to: string, options: { readonly replace?: boolean } = {}): void {
  const url = `#${to.startsWith('/') ? to : `/${to}`}`;
  if (isHeld(url)) {
    asks?.(() => leaveTo(url, options));
    return;
  }
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
