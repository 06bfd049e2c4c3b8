// `npm start`: builds what is missing or old, opens the desktop window where one can start and the local
// door where not, and says which and why.
import path from 'node:path';
import process from 'node:process';
import { buildIfOld } from './build-if-old.ts';
import { chooseDoor } from './choose-door.ts';
import { startDesktop } from './start-desktop.ts';
import { startLocal } from './start-local.ts';
import { readStartOptions } from './start-options.ts';
import type { StartOptions } from './start-options.ts';

const root = path.join(import.meta.dirname, '..');

async function start(): Promise<number> {
  const read = readStartOptions(process.argv.slice(2));
  if (!read.ok) {
    console.error([read.error.message, read.error.hint].filter(Boolean).join('\n'));
    return 2;
  }
  const options = absolute(read.value);
  await buildIfOld(root);
  return open(options);
}

async function open(options: StartOptions): Promise<number> {
  const machine = { platform: process.platform, env: process.env };
  const choice = chooseDoor(machine, path.join(root, 'node_modules', 'electron'), options.local);
  if (choice.door === 'local') {
    console.log(`Opening the local door, because ${choice.why}.`);
    return startLocal(options, root);
  }
  const desktop = await startDesktop(choice.executable, options, root);
  if (desktop.started) {
    console.log('The desktop window is open.');
    return desktop.ended;
  }
  console.log(`Opening the local door, because the desktop could not start: ${desktop.why}.`);
  return startLocal(options, root);
}

/** npm starts scripts in the package's folder: a path given by a person is meant from where they are. */
function absolute(options: StartOptions): StartOptions {
  const from = process.env['INIT_CWD'] ?? process.cwd();
  return options.book === null ? options : { ...options, book: path.resolve(from, options.book) };
}

process.exitCode = await start();
