// A display for the desktop door: the one there is, or an Xvfb of our own that ends with the tests.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import process from 'node:process';
import type { Readable } from 'node:stream';

const xvfb = '/usr/bin/Xvfb';

export function displayMissing(): string | null {
  if (process.platform !== 'linux' || hasDisplay() || existsSync(xvfb)) return null;
  return 'there is no display and no Xvfb';
}

let own: Promise<string> | null = null;

/** The value for DISPLAY; undefined where the machine's own will do. */
export async function display(): Promise<string | undefined> {
  if (process.platform !== 'linux' || hasDisplay()) return process.env['DISPLAY'];
  own ??= startXvfb();
  return own;
}

function hasDisplay(): boolean {
  return [process.env['DISPLAY'], process.env['WAYLAND_DISPLAY']].some(
    (name) => name !== undefined && name !== '',
  );
}

/** It picks a free number itself and tells it on its fourth stream. */
function startXvfb(): Promise<string> {
  const child = spawn(xvfb, ['-displayfd', '3', '-screen', '0', '1920x1200x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  process.on('exit', () => child.kill());
  child.unref();
  return new Promise((resolve, reject) => {
    let told = '';
    const stream = child.stdio[3] as Readable;
    stream.on('data', (chunk: Buffer) => {
      told += chunk.toString();
      if (told.includes('\n')) resolve(`:${told.trim()}`);
    });
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`Xvfb ended with ${code}`)));
  });
}
