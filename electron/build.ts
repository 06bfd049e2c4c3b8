// Builds everything into dist/: the page and that for phones, the desktop's main and preload, and the core's own process.
// Native and optional packages stay outside and are loaded from node_modules.
import { copyFileSync, globSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import type { InlineConfig } from 'vite';
import { sourceStamp, writeStamp } from './build-stamp.ts';

const root = path.join(import.meta.dirname, '..');

interface Program {
  readonly entries: Readonly<Record<string, string>>;
  readonly folder: string;
  readonly format: 'es' | 'cjs';
  readonly ending: 'mjs' | 'cjs';
  /** The first into its folder clears it of what an earlier build left. */
  readonly clears: boolean;
}

const programs: readonly Program[] = [
  {
    entries: { main: 'electron/main.ts' },
    folder: 'dist/electron',
    format: 'es',
    ending: 'mjs',
    clears: true,
  },
  // A sandboxed preload must be one CommonJS file.
  {
    entries: { preload: 'electron/preload.ts' },
    folder: 'dist/electron',
    format: 'cjs',
    ending: 'cjs',
    clears: false,
  },
  {
    entries: {
      process: 'core/host/core-process.ts',
      'improve-worker': 'core/host/improve-worker.ts',
      'wall-worker': 'core/procedures/wall-worker.ts',
    },
    folder: 'dist/core',
    format: 'es',
    ending: 'mjs',
    clears: true,
  },
];

function configFor(program: Program): InlineConfig {
  return {
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true, external: ['electron', 'better-sqlite3', 'highs'] },
    build: {
      ssr: true,
      outDir: program.folder,
      emptyOutDir: program.clears,
      target: 'node22',
      minify: false,
      sourcemap: false,
      rolldownOptions: {
        input: { ...program.entries },
        external: ['electron', 'better-sqlite3', 'highs', /^node:/u],
        output: {
          format: program.format,
          entryFileNames: `[name].${program.ending}`,
          chunkFileNames: `[name]-[hash].${program.ending}`,
        },
      },
    },
  };
}

/** Builds into dist/ and marks it with the stamp of the sources it was built from. */
export async function buildAll(): Promise<void> {
  // Whoever starts the build may run under another name, a test for one: what is built is always what ships.
  process.env['NODE_ENV'] = 'production';
  // Taken first: a source that changes meanwhile makes the stamp old, never falsely new.
  const stamp = sourceStamp(root);
  for (const program of programs) await build(configFor(program));
  copyDemoFiles();
  await buildPage({ outDir: '../dist/renderer' });
  await buildPage({
    outDir: '../dist/renderer-phone',
    rolldownOptions: {
      input: {
        phone: path.join(root, 'renderer', 'phone.html'),
        worker: path.join(root, 'renderer', 'phone', 'worker.ts'),
      },
      // The worker's address is written down in the page, and stays.
      output: {
        entryFileNames: ({ name }) => (name === 'worker' ? '[name].js' : 'assets/[name]-[hash].js'),
      },
    },
  });
  writeStamp(root, stamp);
}

async function buildPage(options: NonNullable<InlineConfig['build']>): Promise<void> {
  await build({
    root: path.join(root, 'renderer'),
    configFile: path.join(root, 'renderer', 'vite.config.ts'),
    logLevel: 'warn',
    build: options,
  });
}

/** The demo is made from its CSV files, which it looks for beside itself. */
function copyDemoFiles(): void {
  const files = globSync('*.csv', { cwd: path.join(root, 'seed-demo') });
  if (files.length === 0) throw new Error('seed-demo has no CSV files.');
  for (const file of files)
    copyFileSync(path.join(root, 'seed-demo', file), path.join(root, 'dist', 'core', file));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await buildAll();
