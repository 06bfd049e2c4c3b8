// Opens the local door: the host in this process, the address in the terminal and, where there is one,
// in the browser. Ends when its last page is gone, or on Ctrl-C, with the book closed cleanly.
import { spawn } from 'node:child_process';
import path from 'node:path';
import process from 'node:process';
import { openLocalDoor } from '../core/host/local-door.ts';
import { startHost } from '../core/host/start-host.ts';
import { hasDisplay } from './choose-door.ts';
import { openFirst } from './first-book.ts';
import type { StartOptions } from './start-options.ts';

/** After a reload or a short sleep of the machine the page comes back sooner than this. */
const emptyAfterMs = 20_000;

/** @returns the exit code, once the door is closed */
export async function startLocal(options: StartOptions, root: string): Promise<number> {
  const host = startHost('local');
  const opened = await openFirst(host.call, options);
  if (!opened.ok) {
    console.error([opened.error.message, opened.error.hint].filter(Boolean).join(' '));
    await host.close();
    return 2;
  }
  const { promise: ending, resolve: end } = Promise.withResolvers<void>();
  const pages = path.join(root, 'dist', 'renderer');
  const onEmpty = options.stay ? () => undefined : end;
  try {
    const door = await openLocalDoor({ host, pages, port: options.port, emptyAfterMs, onEmpty });
    process.once('SIGINT', () => end());
    process.once('SIGTERM', () => end());
    announce(door.url, options);
    await ending;
    await door.close();
    return 0;
  } catch (error) {
    console.error(`The local door could not be opened: ${notOpened(error, options.port)}`);
    return 2;
  } finally {
    await host.close();
  }
}

function notOpened(error: unknown, port: number): string {
  if (error instanceof Error && 'code' in error && error.code === 'EADDRINUSE')
    return `port ${port} is taken. Maybe leave --port away: any free one is found.`;
  return String(error);
}

function announce(url: string, options: StartOptions): void {
  console.log(`Regang is at ${url}`);
  if (!options.noOpen) openInBrowser(url);
}

/** The platform's own way to open an address; where there is none, the printed address has to do. */
function openInBrowser(url: string): void {
  if (!hasDisplay(process)) {
    console.log('There is no display here: open that address in a browser of this machine.');
    return;
  }
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open', url]
      : process.platform === 'win32'
        ? ['rundll32', 'url.dll,FileProtocolHandler', url]
        : ['xdg-open', url];
  if (command === undefined) return;
  const opener = spawn(command, args, { stdio: 'ignore', detached: true });
  opener.on('error', sayOpenIt);
  opener.on('exit', (code) => (code === 0 ? undefined : sayOpenIt()));
  opener.unref();
}

function sayOpenIt(): void {
  console.log('No browser could be started: open that address in one.');
}
