// The desktop's transport. The preload hands the page one port for each load; a port that closes means
// that the core ended, and every call still open is answered with that.
import type { Answer } from '../../core/answer.ts';
import { refuse } from '../../core/answer.ts';
import type { Transport } from './transport.ts';

interface FromCore {
  readonly id?: string;
  readonly answer?: Answer<unknown>;
  readonly push?: string;
}

const coreEnded = refuse('core-ended', 'The part of the app that keeps the book has ended.', {
  hint: 'Maybe close the window and start again: what was acknowledged is in the book.',
});

export function portTransport(page: Window): Transport {
  const open = new Map<string, (answer: Answer<unknown>) => void>();
  const listeners = new Set<() => void>();
  let port: MessagePort | null = null;
  let waiting: { readonly id: string; readonly name: string; readonly input: unknown }[] = [];

  function take(message: FromCore): void {
    if (message.push === 'changed') for (const listener of listeners) listener();
    if (message.id === undefined || message.answer === undefined) return;
    open.get(message.id)?.(message.answer);
    open.delete(message.id);
  }

  function accept(handed: MessagePort): void {
    const again = port !== null;
    port = handed;
    handed.addEventListener('message', (event) => take(event.data as FromCore));
    handed.addEventListener('close', () => {
      if (port === handed) port = null;
      for (const done of open.values()) done(coreEnded);
      open.clear();
    });
    handed.start();
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a port has no origin
    for (const request of waiting) handed.postMessage(request);
    waiting = [];
    if (again) for (const listener of listeners) listener();
  }

  page.addEventListener('message', (event) => {
    if (event.source !== page || (event.data as { kind?: unknown } | null)?.kind !== 'regang-port') return;
    const [handed] = event.ports;
    if (handed !== undefined) accept(handed);
  });

  return {
    door: 'desktop',
    call: (name, input) =>
      new Promise((resolve) => {
        const request = { id: crypto.randomUUID(), name, input };
        open.set(request.id, resolve);
        if (port === null) waiting.push(request);
        // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a port has no origin
        else port.postMessage(request);
      }),
    onChanged: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
  };
}
