// Decides before anything is started whether the desktop window can be tried, and says why not in one
// sentence. Whether it really comes up shows only when it is started.
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
}

export type DoorChoice =
  | { readonly door: 'desktop'; readonly executable: string }
  | { readonly door: 'local'; readonly why: string };

/** @param electronFolder the folder of the `electron` package */
export function chooseDoor(machine: Machine, electronFolder: string, wantsLocal: boolean): DoorChoice {
  if (wantsLocal) return { door: 'local', why: 'it was asked for with --local' };
  const executable = electronExecutable(machine, electronFolder);
  if (executable === null)
    return {
      door: 'local',
      why: 'the desktop runtime is not on this machine (`npx install-electron` fetches it)',
    };
  if (!hasDisplay(machine))
    return { door: 'local', why: 'there is no display here (neither DISPLAY nor WAYLAND_DISPLAY is set)' };
  return { door: 'desktop', executable };
}

/** Where the electron package would find its runtime, without letting it fetch one. */
export function electronExecutable(machine: Machine, electronFolder: string): string | null {
  const pathFile = path.join(electronFolder, 'path.txt');
  const name = existsSync(pathFile) ? readFileSync(pathFile, 'utf8') : null;
  const override = machine.env['ELECTRON_OVERRIDE_DIST_PATH'];
  const file =
    override !== undefined && override !== ''
      ? path.join(override, name ?? usualName(machine.platform))
      : name === null
        ? null
        : path.join(electronFolder, 'dist', name);
  return file !== null && existsSync(file) ? file : null;
}

function usualName(platform: NodeJS.Platform): string {
  return platform === 'win32'
    ? 'electron.exe'
    : platform === 'darwin'
      ? 'Electron.app/Contents/MacOS/Electron'
      : 'electron';
}

export function hasDisplay(machine: Machine): boolean {
  if (machine.platform !== 'linux') return true;
  return [machine.env['DISPLAY'], machine.env['WAYLAND_DISPLAY']].some(
    (name) => name !== undefined && name !== '',
  );
}
