// Opens the app at one of its doors, with a home and a profile of its own, and hands out the page. The
// desktop is the real runtime, the local door a real server and a real browser.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { _electron, chromium } from 'playwright-core';
import type {
  Browser,
  BrowserContext,
  BrowserContextOptions,
  ElectronApplication,
  Page,
} from 'playwright-core';
import { electronExecutable } from '../../electron/choose-door.ts';
import { display, displayMissing } from './display.ts';

export type DoorKind = 'desktop' | 'local';
export const doorKinds: readonly DoorKind[] = ['desktop', 'local'];

export interface DoorOptions {
  readonly demo?: boolean;
  readonly book?: string;
  /** A home made by the caller outlives the door; else each has one of its own that goes with it. */
  readonly home?: string;
  /** The core in the desktop runtime's own process, as it ships; else in this Node, which carries any book. */
  readonly coreInRuntime?: boolean;
  /** Of the browser: window size, light or dark. The desktop's window keeps its own. */
  readonly context?: BrowserContextOptions;
}

export interface OpenDoor {
  readonly kind: DoorKind;
  readonly page: Page;
  readonly home: string;
  /** The desktop's main process. */
  readonly app: ElectronApplication | null;
  /** The local door's first address. */
  readonly url: string | null;
  /** Answers when everything has ended, with what was printed. */
  readonly close: () => Promise<string>;
}

export const root = path.join(import.meta.dirname, '..', '..');
const browserFile = process.env['REGANG_BROWSER'] ?? '/usr/bin/chromium';

const browserFlags: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Why a door cannot be opened on this machine; null where it can. */
export function doorMissing(kind: DoorKind): string | null {
  if (kind === 'local') return existsSync(browserFile) ? null : `there is no browser ${browserFile}`;
  return desktopRuntime() === null ? 'there is no desktop runtime' : displayMissing();
}

export function desktopRuntime(): string | null {
  return electronExecutable(
    { platform: process.platform, env: process.env },
    path.join(root, 'node_modules', 'electron'),
  );
}

export function newFolder(): string {
  return mkdtempSync(path.join(tmpdir(), 'regang-test-'));
}

export function openDoor(kind: DoorKind, options: DoorOptions = {}): Promise<OpenDoor> {
  return kind === 'desktop' ? openDesktop(options) : openLocal(options);
}

function appArguments(options: DoorOptions): readonly string[] {
  return [
    ...(options.demo === true ? ['--demo'] : []),
    ...(options.book === undefined ? [] : [`--book=${options.book}`]),
  ];
}

export function appEnvironment(
  home: string,
  more: Readonly<Record<string, string>> = {},
): Record<string, string> {
  const env = Object.fromEntries(
    Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
  delete env['INIT_CWD'];
  return { ...env, REGANG_HOME: home, REGANG_WHO: 'tester', REGANG_CHECK_OUTPUT: '1', ...more };
}

async function openDesktop(options: DoorOptions): Promise<OpenDoor> {
  const executablePath = desktopRuntime();
  if (executablePath === null) throw new Error('There is no desktop runtime.');
  const home = options.home ?? newFolder();
  const screen = await display();
  const app = await _electron.launch({
    executablePath,
    args: [
      path.join(root, 'tests', 'doors', 'driven-main.mjs'),
      '--no-sandbox',
      // Where there is none its process ends and starts anew, and now and then a driven page stands still.
      '--disable-gpu',
      `--user-data-dir=${path.join(home, 'profile')}`,
      ...appArguments(options),
    ],
    cwd: root,
    env: appEnvironment(home, {
      REGANG_CORE_NODE: options.coreInRuntime === true ? '' : process.execPath,
      ...(screen === undefined ? {} : { DISPLAY: screen }),
    }),
  });
  const printed = collect(app.process().stderr);
  const page = await app.firstWindow();
  // Asked of the page itself: the event may have passed before anybody listened.
  await page.waitForFunction(() => location.protocol === 'regang:' && document.readyState === 'complete');
  return {
    kind: 'desktop',
    page,
    home,
    app,
    url: null,
    close: async () => {
      await app.close();
      if (options.home === undefined) rmSync(home, { recursive: true, force: true });
      return printed();
    },
  };
}

async function openLocal(options: DoorOptions): Promise<OpenDoor> {
  const home = options.home ?? newFolder();
  const server = await startLocalServer([...appArguments(options), '--stay'], home);
  const browser = await startBrowser();
  const context = await browser.newContext(options.context ?? {});
  const page = await context.newPage();
  await page.goto(server.url);
  await page.waitForURL((url) => !url.searchParams.has('token'));
  await page.waitForLoadState('load');
  return {
    kind: 'local',
    page,
    home,
    app: null,
    url: server.url,
    close: async () => {
      await browser.close();
      const printed = await server.stop();
      if (options.home === undefined) rmSync(home, { recursive: true, force: true });
      return printed;
    },
  };
}

export async function startBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: browserFile, args: [...browserFlags] });
}

/** A browser of the size of a phone, whose storage is in `profile` and outlives it. */
export async function startPhone(profile: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, {
    executablePath: browserFile,
    args: [...browserFlags],
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: 2,
    hasTouch: true,
    isMobile: true,
  });
}

export interface LocalServer {
  readonly url: string;
  readonly port: number;
  readonly pid: number;
  readonly ended: Promise<number | null>;
  /** Stops it as Ctrl-C does. Answers all that it printed. */
  readonly stop: () => Promise<string>;
}

/** `npm start -- --local`, with its address read from what it prints. */
export async function startLocalServer(args: readonly string[], home: string): Promise<LocalServer> {
  const start = path.join(root, 'electron', 'start.ts');
  const child = spawn(process.execPath, [start, '--local', '--no-open', ...args], {
    cwd: root,
    env: appEnvironment(home),
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const printed = collect(child.stderr);
  const lines: string[] = [];
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', (code) => resolve(code));
  });
  const url = await new Promise<string>((resolve, reject) => {
    createInterface({ input: child.stdout }).on('line', (line) => {
      lines.push(line);
      const found = /http:\/\/127\.0\.0\.1:\d+\/\?token=[\w-]+/u.exec(line)?.[0];
      if (found !== undefined) resolve(found);
    });
    void ended.then((code) => reject(new Error(`The local door ended with ${code}: ${printed()}`)));
  });
  return {
    url,
    port: Number(new URL(url).port),
    pid: child.pid ?? 0,
    ended,
    stop: async () => {
      child.kill('SIGINT');
      await ended;
      return [...lines, printed()].join('\n');
    },
  };
}

function collect(stream: NodeJS.ReadableStream | null): () => string {
  let text = '';
  stream?.on('data', (chunk: Buffer) => {
    text += chunk.toString();
  });
  return () => text;
}
