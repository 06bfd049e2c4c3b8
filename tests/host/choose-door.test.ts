import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { chooseDoor, electronExecutable, hasDisplay } from '../../electron/choose-door.ts';
import { readStartOptions } from '../../electron/start-options.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'regang-runtime-'));
const empty = path.join(folder, 'package');
mkdirSync(empty);
const runtime = path.join(folder, 'runtime');
mkdirSync(runtime);
writeFileSync(path.join(runtime, 'electron'), '');
const installed = path.join(folder, 'installed');
mkdirSync(path.join(installed, 'dist'), { recursive: true });
writeFileSync(path.join(installed, 'path.txt'), 'electron');
writeFileSync(path.join(installed, 'dist', 'electron'), '');

const linux = (env: Record<string, string>) => ({ platform: 'linux' as const, env });

describe('which door', () => {
  test('no runtime: the local door, and the command that fetches one is named', () => {
    expect(chooseDoor(linux({ DISPLAY: ':0' }), empty, false)).toEqual({
      door: 'local',
      why: expect.stringContaining('npx install-electron'),
    });
  });

  test('a runtime and no display: the local door, because of the display', () => {
    expect(chooseDoor(linux({}), installed, false)).toEqual({
      door: 'local',
      why: expect.stringContaining('no display'),
    });
  });

  test('a runtime and a display of either kind: the desktop', () => {
    const executable = path.join(installed, 'dist', 'electron');
    for (const env of [{ DISPLAY: ':0' }, { WAYLAND_DISPLAY: 'wayland-0' }])
      expect(chooseDoor(linux(env), installed, false)).toEqual({ door: 'desktop', executable });
  });

  test('--local opens the local door whatever there is', () => {
    expect(chooseDoor(linux({ DISPLAY: ':0' }), installed, true)).toMatchObject({ door: 'local' });
  });

  test('the folder named by ELECTRON_OVERRIDE_DIST_PATH goes before the installed one', () => {
    expect(electronExecutable(linux({ ELECTRON_OVERRIDE_DIST_PATH: runtime }), installed)).toBe(
      path.join(runtime, 'electron'),
    );
    expect(electronExecutable(linux({ ELECTRON_OVERRIDE_DIST_PATH: folder }), empty)).toBeNull();
  });

  test('an empty DISPLAY is none; other platforms always have one', () => {
    expect(hasDisplay(linux({ DISPLAY: '' }))).toBe(false);
    expect(hasDisplay({ platform: 'win32', env: {} })).toBe(true);
  });
});

describe('options of the start', () => {
  test('nothing given: desktop first, any port, the browser opened', () => {
    expect(readStartOptions([])).toEqual({
      ok: true,
      value: { demo: false, book: null, local: false, port: 0, noOpen: false, stay: false },
    });
  });

  for (const args of [
    ['--port', 'x'],
    ['--port', '70000'],
    ['--port=-1'],
    ['--bok', 'x'],
    ['x'],
    ['--demo', '--book', 'b'],
    ['--book'],
  ])
    test(`${args.join(' ')} is refused`, () => {
      expect(readStartOptions(args)).toMatchObject({ ok: false, error: { code: 'bad-option' } });
    });
});
