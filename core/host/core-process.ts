// The core in a process of its own, under the desktop window: it takes calls as messages and answers
// them as messages. Its parent is either the desktop runtime or a plain Node with a message channel.
import process from 'node:process';
import { z } from 'zod';
import { startHost } from './start-host.ts';

export const toCore = z.union([
  z.strictObject({ id: z.int(), name: z.string(), input: z.unknown().optional() }),
  z.strictObject({ stop: z.literal(true) }),
]);
export type ToCore = z.output<typeof toCore>;

/** What the desktop runtime gives a process that it started; plain Node has none. */
interface ParentPort {
  readonly on: (event: 'message', listener: (event: { readonly data: unknown }) => void) => void;
  readonly postMessage: (message: unknown) => void;
}

interface Parent {
  readonly send: (message: unknown) => void;
  readonly onMessage: (listener: (message: unknown) => void) => void;
}

function findParent(): Parent {
  const port = (process as { readonly parentPort?: ParentPort }).parentPort;
  if (port !== undefined && port !== null)
    return {
      send: (message) => port.postMessage(message),
      onMessage: (listener) => port.on('message', (event) => listener(event.data)),
    };
  if (process.send === undefined) throw new Error('This program is started by the desktop window only.');
  return {
    send: (message) => process.send?.(message),
    onMessage: (listener) => void process.on('message', listener),
  };
}

const host = startHost('desktop');
const parent = findParent();
let stopping = false;

async function stop(): Promise<void> {
  if (stopping) return;
  stopping = true;
  await host.close();
  process.exit(0);
}

host.onChanged((changeNumber) => parent.send({ push: 'changed', changeNumber }));

parent.onMessage((raw) => {
  const message = toCore.parse(raw);
  if ('stop' in message) {
    void stop();
    return;
  }
  const { id, name, input } = message;
  void host.call(name, input).then((answered) => parent.send({ id, answer: answered }));
});

// A window that is gone without a word: nothing acknowledged is lost, and the book is closed cleanly.
process.on('disconnect', () => void stop());
process.on('SIGTERM', () => void stop());
// Ctrl-C in a terminal reaches every process of the group: the window decides, and then says stop.
process.on('SIGINT', () => undefined);
