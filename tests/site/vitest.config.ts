import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { SecondTries } from './secondTries.ts';

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
    // A browser on a busy machine now and then loses a race that no person would. What needed its second try is named.
    retry: 1,
    reporters: ['default', new SecondTries()],
    expect: { poll: { timeout: 5_000, interval: 25 } },
  },
});
