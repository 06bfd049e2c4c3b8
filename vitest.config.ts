// One configuration for every test. Files that open a window or a browser live in tests/doors and
// run one after another: two cores do not carry two browsers and a planner at once. A whole browser on a busy
// machine stands still now and then, so what failed there in CI is asked once more; twice is a failure.
import process from 'node:process';
import { defineConfig } from 'vitest/config';

const doors = 'tests/doors/**/*.test.ts';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: [doors],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'doors',
          include: [doors],
          fileParallelism: false,
          // As many browsers as there are cores.
          maxConcurrency: 2,
          retry: process.env['CI'] === 'true' ? 1 : 0,
          testTimeout: 180_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
