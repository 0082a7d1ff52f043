import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What reads the built site, alone or in a browser. Two files at a time, in one browser: the machine may have two cores only. */
export default defineConfig({
  root,
  resolve: { alias: { '~/': fileURLToPath(new URL('../../src/', import.meta.url)) } },
  test: {
    root,
    include: ['tests/site/**/*.test.ts'],
    globalSetup: ['tests/site/setup.ts'],
    environment: 'node',
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 5_000, interval: 25 } },
  },
});
