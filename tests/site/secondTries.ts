import type { Reporter, TestModule } from 'vitest/node';

/** Names, at the end, every test that passed at its second try only: a race that somebody has to look for. */
export class SecondTries implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    for (const module of modules) {
      for (const test of module.children.allTests('passed')) {
        if (test.diagnostic()?.flaky) console.log(`  passed at the second try: ${module.moduleId}: ${test.fullName}`);
      }
    }
  }
}
