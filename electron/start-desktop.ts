// Starts the desktop window and waits until it says that it is there. A window that does not come up in
// time, or a runtime that ends at once, is a reason to open the local door instead.
import { spawn, spawnSync } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { alreadyOpenLine, readyLine } from './ready-line.ts';
import type { StartOptions } from './start-options.ts';

export type DesktopStart =
  | { readonly started: true; readonly ended: Promise<number> }
  | { readonly started: false; readonly why: string };

const waitMs = 30_000;

export async function startDesktop(
  executable: string,
  options: StartOptions,
  root: string,
): Promise<DesktopStart> {
  const coreNode = coreNodeFor(executable);
  if (coreNode === 'cannot-run') return { started: false, why: `${executable} does not run here` };
  const child = spawn(executable, desktopArguments(options, root), {
    cwd: process.cwd(),
    stdio: ['ignore', 'pipe', 'inherit'],
    env: coreNode === null ? process.env : { ...process.env, REGANG_CORE_NODE: coreNode },
  });
  // Ctrl-C reaches the window too, which closes its book; this process waits for that.
  process.on('SIGINT', () => undefined);
  process.on('SIGTERM', () => void child.kill('SIGTERM'));
  return watchStart(child);
}

function desktopArguments(options: StartOptions, root: string): readonly string[] {
  // The runtime's own sandbox cannot run as root; it refuses to start at all without this.
  const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
  return [
    root,
    ...(asRoot ? ['--no-sandbox'] : []),
    ...(options.demo ? ['--demo'] : []),
    ...(options.book === null ? [] : [`--book=${options.book}`]),
  ];
}

/**
 * The database library needs Node-API 10: a runtime with less of it cannot carry the core, which then runs in
 * this Node. Null where the runtime can.
 */
function coreNodeFor(executable: string): string | null {
  const asked = spawnSync(executable, ['-p', 'process.versions.napi'], {
    encoding: 'utf8',
    env: { ...process.env, ELECTRON_RUN_AS_NODE: '1' },
    timeout: 20_000,
  });
  const napi = Number(asked.stdout?.trim());
  if (asked.status !== 0 || !(napi > 0)) return 'cannot-run';
  return napi >= 10 ? null : process.execPath;
}

function watchStart(child: ChildProcess): Promise<DesktopStart> {
  return new Promise((resolve) => {
    const ended = new Promise<number>((end) => {
      child.once('exit', (code) => end(code ?? 1));
    });
    const notReady = (why: string): void => {
      clearTimeout(timer);
      resolve({ started: false, why });
    };
    const timer = setTimeout(() => {
      child.kill();
      notReady(`its window did not come up within ${waitMs / 1000} seconds`);
    }, waitMs);
    child.once('error', (error) => notReady(`its runtime could not be started (${error.message})`));
    child.once('exit', (code, signal) =>
      notReady(`its runtime ended at once (${code === null ? `signal ${signal}` : `exit code ${code}`})`),
    );
    if (child.stdout === null) return;
    createInterface({ input: child.stdout }).on('line', (line) => {
      if (line !== readyLine && line !== alreadyOpenLine) {
        console.log(line);
        return;
      }
      clearTimeout(timer);
      if (line === alreadyOpenLine)
        console.log('Regang is already open: its window was brought to the front.');
      resolve({ started: true, ended });
    });
  });
}
