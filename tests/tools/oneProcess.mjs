/**
 * A test runner for Stryker that loads the package and its tests once and then runs, for each mutant, the tests that reach it, the
 * quickest first. A new start of Vitest for each of thousands of mutants takes a second, the tests themselves a few milliseconds.
 */
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { registerHooks } from 'node:module';
import { resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { configureGlobal } from 'fast-check';

globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {};
const shared = globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE];
const standIn = new URL('plainTests.mjs', import.meta.url).href;

const textOf = (url) => readFileSync(fileURLToPath(url.replace('?raw', '')), 'utf8');

/** Files that read the source, which is rewritten here, or start another Node, or try one thing in hundreds of tests that others try in ten. */
const leftOut = ['tests/calc/layers.test.ts', 'tests/calc/examples.test.ts', 'tests/calc/psychrolib.test.ts'];
/** What the first run found out: how long each test takes, and how often the test that passes a mutant most often passes it. */
const firstRun = `${process.env.MUTANT_REPORT}.first`;
/** Tests that draw hundreds of thousands of times: counting who passes where would take them minutes. */
const tooLong = /true ratio is on the line|Monte Carlo|outside figures: uncertainty.*(low|high) end/;

/** How often each mutant is passed in the one test that passes it most. */
function mostInOneTest({ perTest }) {
  const most = {};
  for (const passed of Object.values(perTest))
    for (const [mutant, hits] of Object.entries(passed)) most[mutant] = Math.max(most[mutant] ?? 0, hits);
  return most;
}

/** What is passed while modules load and again by tests need not be loaded anew: each such mutant would cost a new process. */
function withoutLoading({ static: loading, perTest }) {
  const tested = new Set(Object.values(perTest).flatMap(Object.keys));
  return { static: Object.fromEntries(Object.entries(loading).filter(([mutant]) => !tested.has(mutant))), perTest };
}

class OneProcess {
  tests = [];
  most;

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init() {
    registerHooks({
      resolve: (specifier, context, next) =>
        specifier === 'vitest' && context.parentURL !== standIn
          ? { url: standIn, shortCircuit: true }
          : next(
              specifier.startsWith('~/') ? pathToFileURL(resolve('src', specifier.slice(2))).href : specifier,
              context,
            ),
      load: (url, context, next) => {
        if (url.endsWith('?raw')) {
          return { format: 'module', source: `export default ${JSON.stringify(textOf(url))}`, shortCircuit: true };
        }
        const loaded = next(url, context);
        if (!url.includes('/src/calc/')) return loaded;
        // Counting who passes where takes most of the time, and is of use in the first run alone.
        const source = String(loaded.source).replace(/function cover\(\) \{/, '$& if (ns.counted) return;');
        return { ...loaded, source };
      },
    });
    // A property is tried fewer times, always on the same figures, and is not asked for its smallest counter-example.
    configureGlobal({ numRuns: 30, endOnFailure: true, seed: 1 });
    const { tests } = await import(standIn);
    for (const file of globSync('tests/{calc,published}/**/*.test.ts').sort()) {
      if (leftOut.includes(file)) continue;
      const before = tests.length;
      await import(pathToFileURL(resolve(file)));
      for (const [index, one] of tests.entries()) if (index >= before) one.id = `${file} ${index - before} ${one.name}`;
    }
    this.tests = tests.filter(({ name }) => !tooLong.test(name));
  }

  async run(tests, bail) {
    const results = [];
    for (const { id, name, body } of tests) {
      const start = performance.now();
      let failureMessage;
      shared.currentTestId = id;
      shared.hitCount = 0;
      try {
        await body();
      } catch (error) {
        failureMessage = String(error?.message ?? error).slice(0, 200);
      }
      shared.currentTestId = undefined;
      const timeSpentMs = performance.now() - start;
      const status = failureMessage === undefined ? TestStatus.Success : TestStatus.Failed;
      results.push({ id, name, timeSpentMs, status, failureMessage });
      if (bail && failureMessage !== undefined) break;
    }
    return { status: DryRunStatus.Complete, tests: results };
  }

  async dryRun() {
    const result = await this.run(this.tests, false);
    const times = Object.fromEntries(result.tests.map(({ id, timeSpentMs }) => [id, timeSpentMs]));
    writeFileSync(firstRun, JSON.stringify({ times, most: mostInOneTest(shared.mutantCoverage) }));
    return { ...result, mutantCoverage: withoutLoading(shared.mutantCoverage) };
  }

  /** The quickest first. Read from the first run's file, because a process that had to be stopped is followed by a new one. */
  order() {
    const { times, most } = JSON.parse(readFileSync(firstRun, 'utf8'));
    this.tests.sort((a, b) => times[a.id] - times[b.id]);
    this.most = most;
  }

  async mutantRun({ testFilter, activeMutant, disableBail }) {
    shared.counted = true;
    if (!this.most) this.order();
    const asked = testFilter && new Set(testFilter);
    // A loop that no longer ends is known by one test passing it ten times as often as any test should, which is sooner than by the clock.
    const hitLimit = 10 * (this.most[activeMutant.id] ?? 0) + 10_000;
    Object.assign(shared, { activeMutant: activeMutant.id, hitLimit });
    const result = await this.run(asked ? this.tests.filter(({ id }) => asked.has(id)) : this.tests, !disableBail);
    const { hitCount } = shared;
    Object.assign(shared, { activeMutant: undefined, hitCount: undefined, hitLimit: undefined });
    return toMutantRunResult(determineHitLimitReached(hitCount, hitLimit) ?? result);
  }

  /** What no mutant may leave behind: a test that fails without one would have been counted for all that came after. */
  async dispose() {
    const { tests } = await this.run(this.tests, true);
    const failed = tests.find(({ status }) => status === TestStatus.Failed);
    if (failed) throw new Error(`Fails without a mutant now: ${failed.name}: ${failed.failureMessage}`);
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'one process', OneProcess)];
