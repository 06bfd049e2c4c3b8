// The core's own process as the window sees it: messages in, messages out, and its end. It runs in the
// desktop runtime, or in the Node that REGANG_CORE_NODE names where that runtime cannot carry the core.
import { spawn } from 'node:child_process';
import { utilityProcess } from 'electron';

export interface CoreLink {
  readonly send: (message: unknown) => void;
  /** Asks it to close the book and end; ends it by force where it does not in time. */
  readonly stop: () => Promise<void>;
}

export interface CoreListener {
  readonly onMessage: (message: unknown) => void;
  /** Once, however it ended. */
  readonly onEnd: (why: string) => void;
}

const stopMs = 15_000;

export function startCore(program: string, coreNode: string | undefined, listener: CoreListener): CoreLink {
  return coreNode === undefined || coreNode === ''
    ? inRuntime(program, listener)
    : inNode(program, coreNode, listener);
}

function inRuntime(program: string, listener: CoreListener): CoreLink {
  const child = utilityProcess.fork(program, [], { serviceName: 'Regang core' });
  child.on('message', listener.onMessage);
  // Uncaught errors give only `exit`; kills and crashes give it too.
  const ended = new Promise<void>((resolve) => {
    child.once('exit', (code) => {
      resolve();
      listener.onEnd(`exit code ${code}`);
    });
  });
  const send = (message: unknown): void => {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a process has no origin
    child.postMessage(message);
  };
  return {
    send,
    stop: async () =>
      stopped(
        ended,
        () => send({ stop: true }),
        () => void child.kill(),
      ),
  };
}

function inNode(program: string, coreNode: string, listener: CoreListener): CoreLink {
  const child = spawn(coreNode, [program], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  child.on('message', listener.onMessage);
  const ended = new Promise<void>((resolve) => {
    const end = (why: string): void => {
      resolve();
      listener.onEnd(why);
    };
    child.once('error', (error) => end(error.message));
    child.once('exit', (code, signal) => end(signal === null ? `exit code ${code}` : `signal ${signal}`));
  });
  const send = (message: object): void => {
    // Between its end and our hearing of it a message has nowhere to go; `onEnd` answers for it.
    if (child.connected) child.send(message, () => undefined);
  };
  return {
    send: (message) => send(message as object),
    stop: async () =>
      stopped(
        ended,
        () => send({ stop: true }),
        () => void child.kill('SIGKILL'),
      ),
  };
}

async function stopped(ended: Promise<void>, ask: () => void, force: () => void): Promise<void> {
  ask();
  const timer = setTimeout(force, stopMs);
  await ended;
  clearTimeout(timer);
}
