import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));
const src = fileURLToPath(new URL('../src/', import.meta.url));

/** Everything that needs no browser and no built site. */
export default defineConfig({
  root,
  resolve: { alias: { '~/': src } },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    root,
    include: ['tests/{published,calc,job,charts,islands,components,build}/**/*.test.{ts,tsx}'],
    environment: 'node',
    // Nothing here leaves anything behind in a module, so files share them: reading the modules anew for each took longer than the tests.
    isolate: false,
    maxWorkers: 2,
    testTimeout: 30_000,
  },
});
