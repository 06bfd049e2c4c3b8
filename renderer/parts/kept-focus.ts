// Keeps the focus in the page for those who work by keyboard. Where the thing that has it goes away (a pane
// that closes, a line that is taken out) or is out of use for a moment (a button while its work is done),
// the browser puts the focus nowhere and the next Tab begins at the top. It is put back where it came from.
import { useEffect } from 'react';

const focusable =
  'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), [tabindex]';
/** Lists of things of one kind: the next of them takes over from one that is taken out. */
const lists = 'ul, ol, tbody, table, form';
const remembered = 12;

interface Held {
  readonly element: HTMLElement;
  readonly path: string;
  /** From the innermost outwards. */
  readonly around: readonly Element[];
  /** Which of the stops of its list it was. */
  readonly place: number;
}

export function useKeptFocus(): void {
  useEffect(() => {
    let held: Held | null = null;
    let before: HTMLElement[] = [];
    let waits = false;
    let byKeys = true;
    let timer: ReturnType<typeof setTimeout> | undefined;

    const came = (event: FocusEvent): void => {
      if (!(event.target instanceof HTMLElement) || event.target === document.body) return;
      held = holdOf(event.target);
      before = [...before.filter((one) => one !== held?.element), held.element].slice(-remembered);
      waits = false;
    };
    /** A click beside everything lets go on purpose. */
    const left = (): void => {
      setTimeout(() => {
        if (!isLost() || held === null || !held.element.isConnected || isOff(held.element)) return;
        if (!waits && document.hasFocus()) held = null;
      });
    };
    const putBack = (): void => {
      timer = undefined;
      // A pointer has its own place to go on from: the keys should then speak to the screen, not to some field.
      if (!isLost() || held === null || !byKeys) return;
      const target =
        held.path === location.hash.split('?')[0] ? (nextInList(held) ?? last(before)) : undefined;
      (target ?? document.querySelector<HTMLElement>('main'))?.focus();
    };
    const look = (): void => {
      if (held === null) return;
      const { element } = held;
      if (!element.isConnected) {
        if (isLost()) timer ??= setTimeout(putBack, 60);
      } else if (isOff(element)) {
        // The browser takes the focus from what is out of use only a moment later.
        waits = true;
      } else if (waits && isLost()) element.focus();
    };
    const changes = new MutationObserver(look);
    changes.observe(document.body, {
      childList: true,
      subtree: true,
      attributes: true,
      attributeFilter: ['disabled'],
    });
    const used = (event: Event): void => {
      byKeys = event.type === 'keydown';
    };
    document.addEventListener('focusin', came);
    document.addEventListener('focusout', left);
    for (const name of ['keydown', 'pointerdown']) document.addEventListener(name, used, true);
    return () => {
      clearTimeout(timer);
      changes.disconnect();
      document.removeEventListener('focusin', came);
      document.removeEventListener('focusout', left);
      for (const name of ['keydown', 'pointerdown']) document.removeEventListener(name, used, true);
    };
  }, []);
}

function isLost(): boolean {
  return document.activeElement === null || document.activeElement === document.body;
}

function isOff(element: HTMLElement): boolean {
  return element.matches(':disabled');
}

function holdOf(element: HTMLElement): Held {
  const around: Element[] = [];
  for (let one = element.parentElement; one !== null; one = one.parentElement) around.push(one);
  const list = element.closest(lists);
  const place = list === null ? 0 : stopsOf(list).indexOf(element);
  return { element, path: location.hash.split('?')[0] ?? '', around, place };
}

/** What stands in the same list now where the lost one stood; undefined where the list went with it. */
function nextInList({ around, place }: Held): HTMLElement | undefined {
  const list = around.find((one) => one.isConnected);
  if (list?.matches(lists) !== true) return undefined;
  const stops = stopsOf(list);
  return stops[Math.min(place, stops.length - 1)];
}

function last(elements: readonly HTMLElement[]): HTMLElement | undefined {
  return elements.findLast((one) => one.isConnected && !isOff(one) && one.getClientRects().length > 0);
}

function stopsOf(list: Element): HTMLElement[] {
  return [...list.querySelectorAll<HTMLElement>(focusable)].filter((one) => one.tabIndex >= 0);
}
