import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What reads the built site, alone or in a browser. One browser at a time: the machine may have two cores only. */
export default defineConfig({
  root,
  test: {
    root,
    include: ['tests/site/**/*.test.ts'],
    environment: 'node',
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 180_000,
  },
});
