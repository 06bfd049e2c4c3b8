// Where the app keeps its books and its own small settings, by the habit of each platform.
import { homedir } from 'node:os';
import path from 'node:path';

export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
}

/** REGANG_HOME where it is set, else the platform's folder for data of applications. */
export function dataFolder(around: Surroundings = surroundings()): string {
  const { env, home } = around;
  if (filled(env['REGANG_HOME'])) return path.resolve(env['REGANG_HOME']);
  if (around.platform === 'darwin') return path.join(home, 'Library', 'Application Support', 'Regang');
  if (around.platform === 'win32')
    return path.join(
      filled(env['APPDATA']) ? env['APPDATA'] : path.join(home, 'AppData', 'Roaming'),
      'Regang',
    );
  const data = env['XDG_DATA_HOME'];
  // The platform's rule: a relative path there is not valid and is passed over.
  const base = filled(data) && path.isAbsolute(data) ? data : path.join(home, '.local', 'share');
  return path.join(base, 'regang');
}

function surroundings(): Surroundings {
  return { platform: process.platform, env: process.env, home: homedir() };
}

function filled(text: string | undefined): text is string {
  return text !== undefined && text !== '';
}
