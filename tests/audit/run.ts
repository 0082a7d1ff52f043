/**
 * Lighthouse, mobile, on the built site served compressed: accessibility, best practices and SEO once on every template, and
 * the median of five of the performance of three pages. `npm run build` first; `npm run audit [part of a path]`. Outside the
 * test command: a busy machine measures itself.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { serve } from '../../src/build/serve.mjs';
import { findBrowser, quiet } from '../site/browser.ts';
import { installTools } from '../tools/installTools.ts';
import { type Audited, median, summary } from './figures.ts';
import { latestLargestPaint, quick, templates } from './pages.ts';

installTools();
// Installed or not, the project has to compile without it.
const library = new URL('../tools/node_modules/lighthouse/core/index.js', import.meta.url).href;
type Lighthouse = (url: string, flags: object) => Promise<{ readonly lhr: Audited } | undefined>;
const { default: lighthouse } = (await import(library)) as { readonly default: Lighthouse };

const only = process.argv[2] ?? '';
const wanted = (path: string) => path.includes(only);
const runs = 5;
const port = 9333;
const profile = await mkdtemp(join(tmpdir(), 'ton-for-ton-audit-'));
const server = await serve({});
const browser = await chromium.launchPersistentContext(profile, {
  executablePath: findBrowser(),
  args: [...quiet, `--remote-debugging-port=${port}`],
});

async function audited(path: string, onlyCategories: readonly string[], throttlingMethod = 'simulate') {
  const flags = { port, onlyCategories, throttlingMethod, logLevel: 'silent', output: 'json' };
  const result = await lighthouse(server.url + path, flags);
  if (!result) throw new Error(`no audit of ${path}`);
  return result.lhr;
}

let failures = 0;
function say(good: boolean, line: string): void {
  if (!good) failures += 1;
  console.log(`${good ? '  ' : '! '}${line}`);
}

console.log(`${cpus().length} × ${cpus()[0]?.model}, Node ${process.version}`);
for (const path of templates.filter(wanted)) {
  const { good, line, faults } = summary(await audited(path, ['accessibility', 'best-practices', 'seo']));
  say(good, `/${path}: ${line}`);
  for (const fault of faults) console.log(`    ${fault}`);
}
for (const [path, least] of Object.entries(quick).filter(([path]) => wanted(path))) {
  const all: Audited[] = [];
  for (let run = 0; run < runs; run++) all.push(await audited(path, ['performance']));
  const scores = all.map(({ categories }) => Math.round((categories['performance']?.score ?? 0) * 100));
  const machine = median(all.map(({ environment }) => environment.benchmarkIndex));
  say(
    median(scores) >= least,
    `/${path}: performance ${scores.join(', ')}; median at least ${least} (machine index ${machine})`,
  );
  const paint = ({ audits }: Audited) => Math.round(audits['largest-contentful-paint']?.numericValue ?? Number.NaN);
  console.log(`    largest paint, simulated: ${all.map(paint).join(', ')} ms`);
  const slowed = await audited(path, ['performance'], 'devtools');
  const isArticle = least === 98;
  say(
    !isArticle || median(all.map(paint)) < latestLargestPaint,
    `/${path}: largest paint on a slowed browser ${paint(slowed)} ms`,
  );
}

await browser.close();
await server.close();
await rm(profile, { recursive: true, force: true });
if (failures > 0) {
  console.log(`${failures} short of what is asked`);
  process.exitCode = 1;
}
