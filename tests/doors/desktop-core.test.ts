// The desktop when things end: the core's process, the window, a second start.
import { spawn } from 'node:child_process';
import { readFileSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { describe, expect } from 'vitest';
import { addPlace, coreOf, placeCodes, pushesTo } from './call-core.ts';
import { display } from './display.ts';
import { doorTest } from './door-test.ts';
import { appEnvironment, desktopRuntime, newFolder, openDoor, root } from './doors.ts';
import type { OpenDoor } from './doors.ts';

describe('when the core is killed', () => {
  doorTest(
    'desktop',
    'open calls are answered, the window stays and says so, and a restart has all that was acknowledged',
    async () => {
      const door = await openDoor('desktop');
      await answerBoxes(door, 0);
      const call = await coreOf(door);
      await call('host.create', { file: 'site' });
      for (const code of ['A1', 'A2', 'A3']) expect(await addPlace(call, code)).toMatchObject({ ok: true });
      // Many at once, with the kill in their midst: each is either acknowledged or answered as not done.
      const many = Array.from({ length: 40 }, (_, index) => addPlace(call, `B${index}`));
      await many[5];
      killCore(door);
      const answers = await Promise.all(many);
      const refused = answers.filter((each) => !each.ok);
      for (const each of refused) expect(each).toMatchObject({ error: { code: 'core-ended' } });
      await expect.poll(() => boxesOf(door), { timeout: 20_000 }).toHaveLength(1);
      expect((await boxesOf(door))[0]).toContain('has ended');
      await expect
        .poll(async () => (await pushesTo(door.page)).map((each) => each.push), { timeout: 20_000 })
        .toContain('core-ended');
      await expect.poll(async () => (await call('book.check', {})).ok, { timeout: 20_000 }).toBe(true);
      const codes = await placeCodes(call);
      const acknowledged = answers.flatMap((each, index) => (each.ok ? [`B${index}`] : []));
      expect(codes).toEqual(expect.arrayContaining(['A1', 'A2', 'A3', ...acknowledged]));
      expect(await call('book.check', {})).toMatchObject({ ok: true, value: { problems: [] } });
      await door.close();
    },
  );

  doorTest(
    'desktop',
    'and is not started again, the window stays and every call is refused as core-ended',
    async () => {
      const door = await openDoor('desktop');
      await answerBoxes(door, 1);
      const call = await coreOf(door);
      await call('host.create', { file: 'site' });
      killCore(door);
      await expect.poll(() => boxesOf(door), { timeout: 20_000 }).toHaveLength(1);
      expect(await call('book.check', {})).toMatchObject({ ok: false, error: { code: 'core-ended' } });
      expect(door.app!.windows()).toHaveLength(1);
      await door.close();
    },
  );
});

describe('the core in a process of the runtime, as it ships', () => {
  doorTest(
    'desktop',
    'answers calls, and opens books where its Node-API is 10 or says that it cannot',
    async () => {
      const door = await openDoor('desktop', { coreInRuntime: true });
      const call = await coreOf(door);
      expect(await call('host.state', {})).toMatchObject({
        ok: true,
        value: { door: 'desktop', book: null },
      });
      const napi = await door.app!.evaluate(() => Number(process.versions['napi']));
      expect(await call('host.create', { file: 'site' })).toMatchObject(
        napi >= 10 ? { ok: true } : { ok: false, error: { code: 'node-too-old' } },
      );
      await door.close();
    },
  );

  doorTest('desktop', 'killed, it is started again on the press of a button', async () => {
    const door = await openDoor('desktop', { coreInRuntime: true });
    await answerBoxes(door, 0);
    const call = await coreOf(door);
    const pid = await door.app!.evaluate(
      ({ app }) => app.getAppMetrics().find((each) => each.name === 'Regang core')?.pid ?? 0,
    );
    expect(pid).toBeGreaterThan(0);
    process.kill(pid, 'SIGKILL');
    await expect.poll(() => boxesOf(door), { timeout: 20_000 }).toHaveLength(1);
    await expect
      .poll(async () => call('host.state', {}), { timeout: 20_000 })
      .toMatchObject({ ok: true, value: { door: 'desktop' } });
    await door.close();
  });
});

describe('closing', () => {
  doorTest('desktop', 'the window in the midst of commands loses none that was acknowledged', async () => {
    const home = newFolder();
    const door = await openDoor('desktop', { home });
    const call = await coreOf(door);
    await call('host.create', { file: 'site' });
    const acknowledged: string[] = [];
    const many = Array.from({ length: 30 }, async (_, index) => {
      const added = await addPlace(call, `C${index}`).catch(() => null);
      if (added?.ok === true) acknowledged.push(`C${index}`);
    });
    await many[3];
    await door.close();
    await Promise.allSettled(many);
    expect(acknowledged.length).toBeGreaterThan(2);
    const again = await openDoor('desktop', { home, book: path.join(home, 'site.regang') });
    const callAgain = await coreOf(again);
    await expect.poll(async () => (await callAgain('book.check', {})).ok, { timeout: 20_000 }).toBe(true);
    expect(await placeCodes(callAgain)).toEqual(expect.arrayContaining(acknowledged));
    await again.close();
    rmSync(home, { recursive: true, force: true });
  });

  doorTest('desktop', 'the title names the open book', async () => {
    const door = await openDoor('desktop');
    const call = await coreOf(door);
    expect(await titleOf(door)).toBe('Regang');
    await call('host.create', { file: 'north yard' });
    await expect.poll(() => titleOf(door)).toBe('north yard – Regang');
    await door.close();
  });
});

describe('a second start', () => {
  doorTest('desktop', 'ends at once, and the first window opens the book that it was given', async () => {
    const home = newFolder();
    const door = await openDoor('desktop', { home });
    const call = await coreOf(door);
    await call('host.create', { file: 'one' });
    await call('host.create', { file: 'two' });
    const [code, printed] = await startAgain(home, path.join(home, 'one.regang'));
    expect(code).toBe(0);
    expect(printed).toContain('already open');
    await expect.poll(() => titleOf(door), { timeout: 20_000 }).toBe('one – Regang');
    expect(door.app!.windows()).toHaveLength(1);
    await door.close();
    rmSync(home, { recursive: true, force: true });
  });
});

describe('native dialogs', () => {
  doorTest(
    'desktop',
    'give a path for a book, name and text for a table, null where cancelled, and remember the folder',
    async () => {
      const door = await openDoor('desktop');
      const picked = await door.app!.evaluate(async ({ dialog }, folder) => {
        const asked: unknown[] = [];
        Object.assign(globalThis, { askedForTests: asked });
        dialog.showSaveDialog = ((_window: unknown, options: { defaultPath?: string }) => {
          asked.push(options.defaultPath);
          return Promise.resolve({ canceled: false, filePath: `${folder}/chosen/new.regang` });
        }) as unknown as typeof dialog.showSaveDialog;
        dialog.showOpenDialog = ((
          _window: unknown,
          options: { defaultPath?: string; filters: { name: string }[] },
        ) => {
          asked.push(options.defaultPath);
          const isTable = options.filters[0]?.name.includes('CSV') === true;
          return Promise.resolve({ canceled: !isTable, filePaths: [`${folder}/package.json`] });
        }) as unknown as typeof dialog.showOpenDialog;
        return null;
      }, root);
      expect(picked).toBeNull();
      const pick = (kind: string): Promise<unknown> =>
        door.page.evaluate(
          (asked) =>
            (window as unknown as { regang: { pick: (kind: string) => Promise<unknown> } }).regang.pick(
              asked,
            ),
          kind,
        );
      expect(await pick('new-book')).toBe(`${root}/chosen/new.regang`);
      expect(await pick('open-book')).toBeNull();
      expect(await pick('open-csv')).toMatchObject({
        name: 'package.json',
        text: expect.stringContaining('"regang"'),
      });
      await expect(pick('any-file')).rejects.toThrow('unknown kind');
      const asked = await door.app!.evaluate(
        () => (globalThis as unknown as { askedForTests: string[] }).askedForTests,
      );
      expect(asked).toEqual(['book.regang', `${root}/chosen`, `${root}/chosen`]);
      await door.close();
    },
  );
});

function titleOf(door: OpenDoor): Promise<string> {
  return door.app!.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.getTitle() ?? '');
}

/** Native boxes cannot be clicked: they are answered by the number of a button, and what they said is kept. */
async function answerBoxes(door: OpenDoor, response: number): Promise<void> {
  await door.app!.evaluate(({ dialog }, given) => {
    const said: string[] = [];
    Object.assign(globalThis, { boxesForTests: said });
    dialog.showMessageBox = (...parts: unknown[]) => {
      said.push((parts.at(-1) as { message: string }).message);
      return Promise.resolve({ response: given, checkboxChecked: false });
    };
  }, response);
}

function boxesOf(door: OpenDoor): Promise<readonly string[]> {
  return door.app!.evaluate(() => [...(globalThis as unknown as { boxesForTests: string[] }).boxesForTests]);
}

/** Ends the one child of the window's process that runs the core's program, as a crash would. */
function killCore(door: OpenDoor): void {
  const main = door.app!.process().pid;
  const cores = readdirSync('/proc')
    .filter((name) => /^\d+$/u.test(name))
    .filter((pid) => parentOf(pid) === main && commandOf(pid).some((word) => word.endsWith('process.mjs')));
  expect(cores).toHaveLength(1);
  process.kill(Number(cores[0]), 'SIGKILL');
}

function parentOf(pid: string): number {
  const status = readIfThere(`/proc/${pid}/status`);
  return Number(/^PPid:\s+(\d+)$/mu.exec(status)?.[1]);
}

function commandOf(pid: string): readonly string[] {
  return readIfThere(`/proc/${pid}/cmdline`).split('\0');
}

/** Processes end while they are being looked at. */
function readIfThere(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}

async function startAgain(home: string, book: string): Promise<readonly [number | null, string]> {
  const screen = await display();
  const child = spawn(
    desktopRuntime() ?? '',
    [root, '--no-sandbox', `--user-data-dir=${path.join(home, 'profile')}`, `--book=${book}`],
    {
      env: appEnvironment(home, screen === undefined ? {} : { DISPLAY: screen }),
      stdio: ['ignore', 'pipe', 'ignore'],
    },
  );
  let printed = '';
  child.stdout.on('data', (chunk: Buffer) => (printed += chunk.toString()));
  const code = await new Promise<number | null>((resolve) => child.once('exit', resolve));
  return [code, printed];
}
