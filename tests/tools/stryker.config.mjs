import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * How the mutation test runs: one change at a time in the calculation package, and only the tests that reach it. `mutate.ts` says
 * which files and which tests.
 */
export default {
  testRunner: 'one process',
  plugins: [fileURLToPath(new URL('oneProcess.mjs', import.meta.url))],
  coverageAnalysis: 'perTest',
  // What is worked out while a module loads is mostly data; a change there would need every test anew.
  ignoreStatic: true,
  // A code, or a key left out of a record, is refused by the compiler before any test runs.
  mutator: { excludedMutations: ['StringLiteral', 'ObjectLiteral'] },
  concurrency: 1,
  timeoutMS: 2_500,
  dryRunTimeoutMinutes: 15,
  disableTypeChecks: false,
  reporters: ['json', 'progress-append-only'],
  jsonReporter: { fileName: process.env.MUTANT_REPORT },
  tempDirName: join(tmpdir(), 'ton-for-ton-mutants'),
  ignorePatterns: ['content', 'dist', 'public', '.astro', 'tests/site', 'tests/charts'],
  allowEmpty: true,
};
