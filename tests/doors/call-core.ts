// Calls the core as the page of a door would: by a request in the browser, by the page's own message port
// on the desktop. Nothing of the page's scripts is used, so that the way itself is tested.
import type { Page } from 'playwright-core';
import type { Answer } from '../../core/answer.ts';
import type { OpenDoor } from './doors.ts';

export type CoreCall = <T = Record<string, unknown>>(name: string, input: unknown) => Promise<Answer<T>>;

/** On the desktop the page is loaded once more, to be there when its port comes. */
export async function coreOf(door: OpenDoor): Promise<CoreCall> {
  if (door.kind === 'local') return (name, input) => callByRequest(door.page, name, input);
  await door.page.addInitScript(keepPort);
  await door.page.reload();
  await door.page.waitForFunction(() => 'portForTests' in window);
  return (name, input) => callByPort(door.page, name, input);
}

interface TestWindow {
  portForTests?: MessagePort;
  pushesForTests?: unknown[];
}

function keepPort(): void {
  const page = window as unknown as TestWindow;
  addEventListener('message', (event: MessageEvent<{ kind?: string } | null>) => {
    if (event.data?.kind !== 'regang-port') return;
    page.portForTests = event.ports[0]!;
    page.pushesForTests = [];
    page.portForTests.addEventListener('message', (message: MessageEvent<{ push?: string }>) => {
      if (message.data.push !== undefined) page.pushesForTests?.push(message.data);
    });
    page.portForTests.start();
  });
}

async function callByPort<T>(page: Page, name: string, input: unknown): Promise<Answer<T>> {
  const answered = await page.evaluate(
    ([calledName, calledInput]) =>
      new Promise<unknown>((resolve) => {
        const port = (window as unknown as TestWindow).portForTests!;
        const id = `test-${crypto.randomUUID()}`;
        const take = (event: MessageEvent<{ id?: string; answer?: unknown }>): void => {
          if (event.data.id !== id) return;
          port.removeEventListener('message', take);
          resolve(event.data.answer);
        };
        port.addEventListener('message', take);
        // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a port has no origin
        port.postMessage({ id, name: calledName, input: calledInput });
      }),
    [name, input] as const,
  );
  return answered as Answer<T>;
}

/** What the core told the page of its own accord, on the desktop. */
export function pushesTo(page: Page): Promise<readonly { readonly push: string }[]> {
  return page.evaluate(
    () => [...((window as unknown as TestWindow).pushesForTests ?? [])] as { push: string }[],
  );
}

async function callByRequest<T>(page: Page, name: string, input: unknown): Promise<Answer<T>> {
  const answered = await page.evaluate(
    async ([calledName, calledInput]) => {
      const response = await fetch(`/call/${calledName}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(calledInput),
      });
      return (await response.json()) as unknown;
    },
    [name, input] as const,
  );
  return answered as Answer<T>;
}

/** A command that every book takes: one more place, named by its code. */
export async function addPlace(call: CoreCall, code: string): Promise<Answer<Record<string, unknown>>> {
  const text = `what,code,name,kind\nlocation,${code},Place ${code},yard\n`;
  return call('import.file', { commandId: `command-${code}`, kind: 'places', text });
}

export async function placeCodes(call: CoreCall): Promise<readonly string[]> {
  const answered = await call<{ locations: { code: string }[] }>('yard.places', {});
  if (!answered.ok) throw new Error(answered.error.message);
  return answered.value.locations.map((location) => location.code);
}
