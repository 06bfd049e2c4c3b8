// Runs the command line as a script would: a process of its own, text in, text and an exit code out.
import { spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';

export const root = path.join(import.meta.dirname, '..', '..');
export const cli = path.join(root, 'core', 'cli.ts');

export interface Ran {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
  /** Standard output as the one document that it must be. */
  readonly document: () => Record<string, unknown>;
}

export function newFolder(): string {
  return mkdtempSync(path.join(tmpdir(), 'regang-cli-'));
}

export function run(args: readonly string[], input = '', folder = root): Promise<Ran> {
  const env = { ...process.env, INIT_CWD: folder, REGANG_WHO: 'tester', REGANG_CHECK_OUTPUT: '1' };
  const child = spawn(process.execPath, [cli, ...args], { cwd: root, env });
  let stdout = '';
  let stderr = '';
  child.stdout.setEncoding('utf8').on('data', (chunk: string) => (stdout += chunk));
  child.stderr.setEncoding('utf8').on('data', (chunk: string) => (stderr += chunk));
  // A program that refuses its options never reads what is offered to it.
  child.stdin.on('error', () => undefined);
  child.stdin.end(input);
  return new Promise((resolve) => {
    child.once('close', (code) => {
      resolve({ code, stdout, stderr, document: () => JSON.parse(stdout) as Record<string, unknown> });
    });
  });
}
