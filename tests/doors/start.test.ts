// `npm start` as a whole: which door it opens, what it says about it, and how it ends.
import { spawn, spawnSync } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { chmodSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { describe, expect, test } from 'vitest';
import { coreOf } from './call-core.ts';
import { display } from './display.ts';
import { doorTest } from './door-test.ts';
import { appEnvironment, desktopRuntime, doorKinds, newFolder, openDoor, root } from './doors.ts';

interface Started {
  readonly child: ChildProcess;
  /** Resolves with everything printed, once it holds `text`; rejects where the program ends without it. */
  readonly says: (text: string) => Promise<string>;
  readonly ended: Promise<number | null>;
}

function start(args: readonly string[], env: Record<string, string>): Started {
  const child = spawn(process.execPath, [path.join(root, 'electron', 'start.mjs'), ...args], {
    cwd: root,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let printed = '';
  const lookers = new Set<() => void>();
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (chunk: Buffer) => {
      printed += chunk.toString();
      for (const look of lookers) look();
    });
  const ended = new Promise<number | null>((resolve) => {
    child.once('close', resolve);
  });
  const says = (text: string): Promise<string> =>
    new Promise((resolve, reject) => {
      const look = (): void => {
        if (printed.includes(text)) resolve(printed);
      };
      lookers.add(look);
      look();
      void ended.then((code) => reject(new Error(`It ended with ${code}: ${printed}`)));
    });
  return { child, says, ended };
}

function withoutDisplay(home: string, more: Record<string, string> = {}): Record<string, string> {
  const { DISPLAY: _x, WAYLAND_DISPLAY: _w, ...env } = appEnvironment(home);
  return { ...env, ...more };
}

/** Stops it as Ctrl-C does: its exit code must be 0, the book closed. */
async function stop(started: Started): Promise<void> {
  started.child.kill('SIGINT');
  expect(await started.ended).toBe(0);
}

describe('the local door is opened', () => {
  test('where the desktop runtime is missing, and says how to fetch it', async () => {
    const home = newFolder();
    const env = withoutDisplay(home, { DISPLAY: ':0', ELECTRON_OVERRIDE_DIST_PATH: home });
    const started = start(['--no-open'], env);
    const printed = await started.says('http://127.0.0.1:');
    expect(printed).toContain(
      'local door, because the desktop runtime is not on this machine (`npx install-electron` fetches it)',
    );
    await stop(started);
  });

  test('where a runtime ends at once, and says with what', async () => {
    const home = newFolder();
    const runtime = path.join(home, 'electron');
    writeFileSync(runtime, '#!/bin/sh\n[ "$ELECTRON_RUN_AS_NODE" = 1 ] && echo 10 && exit 0\nexit 3\n');
    chmodSync(runtime, 0o755);
    const started = start(
      ['--no-open'],
      withoutDisplay(home, { DISPLAY: ':0', ELECTRON_OVERRIDE_DIST_PATH: home }),
    );
    const printed = await started.says('http://127.0.0.1:');
    expect(printed).toContain('the desktop could not start: its runtime ended at once (exit code 3)');
    await stop(started);
  });

  doorTest('desktop', 'where there is a runtime and no display, and says so', async () => {
    const started = start(['--no-open'], withoutDisplay(newFolder()));
    expect(await started.says('http://127.0.0.1:')).toContain('local door, because there is no display here');
    await stop(started);
  });

  test('with a book that is not there: refused with exit 2 and its name', async () => {
    const started = start(['--local', '--no-open', '--book', 'nowhere.regang'], withoutDisplay(newFolder()));
    await expect(started.says('http://')).rejects.toThrow('nowhere.regang');
    expect(await started.ended).toBe(2);
  });

  test('on a port that is taken: refused with exit 2 and what to do', async () => {
    const first = start(['--local', '--no-open'], withoutDisplay(newFolder()));
    const port = /127\.0\.0\.1:(\d+)/u.exec(await first.says('http://127.0.0.1:'))?.[1] ?? '';
    const second = start(['--local', '--no-open', '--port', port], withoutDisplay(newFolder()));
    await expect(second.says('http://')).rejects.toThrow(`port ${port} is taken`);
    expect(await second.ended).toBe(2);
    await stop(first);
  });

  test('with an unknown option: refused with exit 2', async () => {
    expect(await start(['--desk'], withoutDisplay(newFolder())).ended).toBe(2);
  });
});

describe('the desktop is opened', () => {
  doorTest('desktop', 'where there is a display; it says so, and ends with its window', async () => {
    const home = newFolder();
    const screen = await display();
    // Its own profile, so that no other window of this machine is taken for it.
    const env = {
      ...appEnvironment(home),
      XDG_CONFIG_HOME: home,
      ...(screen === undefined ? {} : { DISPLAY: screen }),
    };
    const started = start([], env);
    expect(await started.says('The desktop window is open.')).not.toContain('local door');
    const [main] = childrenOf(started.child.pid ?? 0, desktopRuntime() ?? '');
    process.kill(main ?? 0, 'SIGTERM');
    expect(await started.ended).toBe(0);
    rmSync(home, { recursive: true, force: true });
  });
});

describe('an older Node', () => {
  doorTest('desktop', 'as the one in an older runtime is told what is needed, exit 2', async () => {
    const asNode = { ...appEnvironment(newFolder()), ELECTRON_RUN_AS_NODE: '1' };
    const program = path.join(root, 'electron', 'start.mjs');
    const child = spawnSync(desktopRuntime() ?? '', [program, '--help'], { env: asNode, encoding: 'utf8' });
    // A runtime that is new enough goes on and refuses the option: exit 2 as well, with other words.
    expect(child.status).toBe(2);
    expect(child.stderr).toMatch(/Regang needs Node 22\.18 or newer; this is v20|--help/u);
  });
});

describe('the demo', () => {
  for (const kind of doorKinds)
    doorTest(kind, `at the ${kind} door shows the board first, with the job of the demo`, async () => {
      const door = await openDoor(kind, { demo: true });
      await door.page.waitForFunction(() => location.hash.startsWith('#/board'));
      const call = await coreOf(door);
      const state = await call<{ jobs: { code: string }[] }>('book.state', {});
      const job = state.ok ? state.value.jobs[0]?.code : undefined;
      expect(job).toBeDefined();
      const plan = { commandId: 'plan-command-1', job, improveSeconds: 0.2 };
      expect(await call('plan.make', plan)).toMatchObject({ ok: true, value: { job } });
      expect(await call('host.state', {})).toMatchObject({
        value: { door: kind, book: { name: 'demo', readOnly: false }, who: 'tester' },
      });
      // The thread that plans beside is found in what was built as in the sources.
      expect(await door.close()).not.toContain('no plan was made beside');
    });
});

describe('a start without a word', () => {
  for (const kind of doorKinds)
    doorTest(kind, `at the ${kind} door opens the book that was open last`, async () => {
      const home = newFolder();
      const first = await openDoor(kind, { home });
      const call = await coreOf(first);
      await call('host.create', { file: 'one' });
      await call('host.create', { file: 'two' });
      await first.close();
      const again = await openDoor(kind, { home });
      const callAgain = await coreOf(again);
      await expect
        .poll(async () => await callAgain('host.state', {}), { timeout: 20_000 })
        .toMatchObject({ ok: true, value: { book: { name: 'two' } } });
      await again.close();
      rmSync(home, { recursive: true, force: true });
    });
});

function childrenOf(parent: number, program: string): readonly number[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/u.test(name))
    .filter((pid) => {
      try {
        const status = readFileSync(`/proc/${pid}/status`, 'utf8');
        const command = readFileSync(`/proc/${pid}/cmdline`, 'utf8');
        return status.includes(`\nPPid:\t${parent}\n`) && command.startsWith(program);
      } catch {
        return false;
      }
    })
    .map(Number);
}
