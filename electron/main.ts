// The desktop's first file: what must happen before the runtime is ready, in its order, then the session.
// Nothing here waits at the top level for `ready`: the runtime waits for this module.
import path from 'node:path';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { app } from 'electron';
import { Desktop } from './desktop.ts';
import { firstBook } from './first-book.ts';
import type { FirstBook } from './first-book.ts';
import { setMenu } from './menu.ts';
import { registerPageScheme, servePage } from './page-scheme.ts';
import { alreadyOpenLine } from './ready-line.ts';
import { guardAllPages, refusePermissions } from './window-guards.ts';

// As root the runtime starts only without its sandbox, and both together end in a loop of crashes.
if (!app.commandLine.hasSwitch('no-sandbox')) app.enableSandbox();
registerPageScheme();
guardAllPages();

const first = firstFromArguments(process.argv.slice(1));
if (app.requestSingleInstanceLock(first)) {
  app.whenReady().then(run, fail);
} else {
  console.log(alreadyOpenLine);
  app.quit();
}

function run(): void {
  refusePermissions();
  servePage(path.join(import.meta.dirname, '..', 'renderer'));
  const desktop = new Desktop();
  setMenu({
    choose: (choice) => void desktop.choose(choice).catch(report),
    savePdf: () => void desktop.savePdf().catch(report),
    go: (direction) => desktop.go(direction),
    window: () => desktop.window,
  });
  desktop.start(first);

  app.on('second-instance', (_event, _argv, _folder, data) => {
    desktop.showWindow();
    const asked = firstBook.safeParse(data);
    if (asked.success && (asked.data.demo || asked.data.book !== null))
      void desktop.openBook(asked.data).catch(report);
  });
  app.on('activate', () => desktop.showWindow());
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  let stopping = false;
  app.on('will-quit', (event) => {
    if (stopping) return;
    stopping = true;
    // The core closes its book first: it must not be pulled away with this process. All windows are closed
    // by now, and a second quit from inside the first is not heard, so that the end is an exit.
    event.preventDefault();
    desktop
      .stop()
      .catch(report)
      .finally(() => setImmediate(() => app.exit(0)));
  });
  process.on('SIGINT', () => app.quit());
  process.on('SIGTERM', () => app.quit());
}

function firstFromArguments(args: readonly string[]): FirstBook {
  const { values } = parseArgs({
    args: [...args],
    strict: false,
    options: { demo: { type: 'boolean' }, book: { type: 'string' } },
  });
  return {
    demo: values.demo === true,
    book: typeof values.book === 'string' ? path.resolve(values.book) : null,
  };
}

function report(error: unknown): void {
  console.error(`regang: ${String(error)}`);
}

function fail(error: unknown): void {
  report(error);
  app.exit(1);
}
