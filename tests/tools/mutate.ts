/**
 * Mutation test of the calculation package: changes one thing at a time in `src/calc` and looks whether a test fails. Modules that
 * hold data, names of sources or types alone are left out. `npm run mutate` takes folder by folder and prints each survivor and the
 * score of each file; `npm run mutate -- 'wetBulb.ts' 'airflow/*.ts'` takes those files. Outside the test command.
 */
import { spawnSync } from 'node:child_process';
import { globSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { installTools } from './installTools.ts';

interface Mutant {
  readonly mutatorName: string;
  readonly status: 'Killed' | 'Timeout' | 'Survived' | 'NoCoverage' | 'Ignored' | 'RuntimeError' | 'CompileError';
  readonly replacement: string;
  readonly location: { readonly start: { readonly line: number; readonly column: number } };
}
interface Report {
  readonly files: Readonly<Record<string, { readonly mutants: readonly Mutant[] }>>;
}
/** Mutants that a test noticed, and all that one could. */
type Score = readonly [noticed: number, all: number];

const tools = fileURLToPath(new URL('.', import.meta.url));
const kept = mkdtempSync(join(tmpdir(), 'mutants-'));
const left = /(^|\/)(index|sources|sourceLabels|articleWorks|works|refrigerantData|\w*[tT]ypes)\.ts$/;

const groups: readonly (readonly [name: string, patterns: readonly string[]])[] = process.argv[2]
  ? [['chosen', process.argv.slice(2)]]
  : [
      ['airflow', ['airflow/*.ts']],
      ['package, a to d', ['[a-d]*.ts']],
      ['package, e to m', ['[e-m]*.ts']],
      ['package, n to z', ['[n-z]*.ts']],
      ['confidence', ['confidence/*.ts']],
    ];

const share = ([noticed, all]: Score) => `${((100 * noticed) / all).toFixed(1).padStart(5)} %  ${noticed} of ${all}`;
const sum = (scores: readonly Score[]): Score => [
  scores.reduce((total, [noticed]) => total + noticed, 0),
  scores.reduce((total, [, all]) => total + all, 0),
];

/** Tries the mutants of some files; gives the score of each file that has any, and prints what survived. */
function tried(name: string, patterns: readonly string[]): Record<string, Score> {
  const files = patterns
    .flatMap((pattern) => globSync(`src/calc/${pattern}`))
    .filter((path) => !left.test(path))
    .sort();
  const report = join(kept, `${name}.json`);
  const { status } = spawnSync(
    process.execPath,
    [
      `${tools}node_modules/@stryker-mutator/core/bin/stryker.js`,
      'run',
      `${tools}stryker.config.mjs`,
      '--mutate',
      files.join(','),
    ],
    { stdio: 'inherit', env: { ...process.env, MUTANT_REPORT: report } },
  );
  if (status !== 0) throw new Error(`The mutants of ${name} could not be tried.`);
  const scores: Record<string, Score> = {};
  for (const [path, { mutants }] of Object.entries((JSON.parse(readFileSync(report, 'utf8')) as Report).files)) {
    const counted = mutants.filter(({ status }) => /Killed|Timeout|Survived|NoCoverage/.test(status));
    const alive = counted.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
    if (counted.length > 0) scores[path] = [counted.length - alive.length, counted.length];
    for (const { location, status, mutatorName, replacement } of alive)
      console.log(
        `${path}:${location.start.line}:${location.start.column} ${status} ${mutatorName} ${replacement.replace(/\s+/g, ' ').slice(0, 90)}`,
      );
  }
  return scores;
}

installTools();
const all: Record<string, Score> = {};
for (const [name, patterns] of groups) {
  const scores = tried(name, patterns);
  for (const [path, score] of Object.entries(scores)) console.log(`${share(score)}  ${path}`);
  console.log(`${share(sum(Object.values(scores)))}  ${name}`);
  Object.assign(all, scores);
}
writeFileSync(join(kept, 'scores.json'), JSON.stringify(all, null, 1));
console.log(`${share(sum(Object.values(all)))}  in all`);
