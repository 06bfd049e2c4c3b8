// One configuration for every test. Files that open a window or a browser live in tests/doors and
// run one after another: two cores do not carry two browsers and a planner at once.
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
          testTimeout: 180_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
