/**
 * One short journey through the built site in engines other than the one that the browser tests use: home, a whole job to its verdict,
 * the air chart, an article, the search, and the sheet again without a signal. `npm run engines` after a build; an engine that is not
 * installed is skipped, loudly. On Debian: `firefox-esr`.
 */
import { serve } from '../../src/build/serve.mjs';
import { cells, readings } from '../site/readings.ts';
import type { Engine } from './engine.ts';
import { firefox, firefoxHere } from './firefox.ts';

/** Asks the page until the answer will do. */
async function until<Value>(engine: Engine, what: string, expression: string, enough: (value: Value) => boolean) {
  let value: Value | undefined;
  for (const end = Date.now() + 30_000; Date.now() < end; ) {
    value = (await engine.evaluate(expression)) as Value;
    if (enough(value)) return value;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`${what}: ${JSON.stringify(value)}`);
}

const islands = `document.querySelector('astro-island[ssr]:not([client="visible"])') === null`;
const bar = `document.querySelector('.answer-bar .answer-key')?.innerText.replace(/\\s+/g, ' ') ?? ''`;
/** As a person does it: the field has the focus, what stood there is chosen, and letters come in its place. */
const type = (selector: string, index: number, text: string) =>
  `(() => { const field = document.querySelectorAll(${JSON.stringify(selector)})[${index}]; field.focus(); field.select(); return document.execCommand('insertText', false, ${JSON.stringify(text)}); })()`;
const choose = (step: string, option: string) =>
  `[...document.querySelectorAll('#step-${step} label')].find((label) => label.innerText.trim() === ${JSON.stringify(option)})?.click()`;
const press = (name: string) =>
  `[...document.querySelectorAll('button')].find((button) => button.innerText.trim() === ${JSON.stringify(name)})?.click()`;

async function fillJob(engine: Engine): Promise<void> {
  await engine.evaluate(press('Open all steps'));
  const figures = { ...readings, outdoorDryBulb: '91', nominalCapacity: '3' };
  for (const [key, text] of Object.entries(figures)) await engine.evaluate(type(`[id="field-${key}"]`, 0, text));
  await engine.evaluate(
    `(() => { const list = document.querySelector('main select'); list.value = 'flowGrid'; for (const kind of ['input', 'change']) list.dispatchEvent(new Event(kind, { bubbles: true })); })()`,
  );
  await engine.evaluate(choose('outdoors', 'Yes, one speed'));
  await until<number>(engine, 'cells', `document.querySelectorAll('.cell-fields input').length`, (count) => count >= 4);
  for (const [index, text] of cells.entries()) await engine.evaluate(type('.cell-fields input', index, text));
  await engine.evaluate(choose('rating', 'Yes (net)'));
  // Until it is said whether the probes were compared there is a share and no verdict.
  await until<string>(engine, 'a share', bar, (text) => text.includes('%'));
  await engine.evaluate(choose('sure', 'No'));
}

async function journey(engine: Engine): Promise<void> {
  const server = await serve();
  const to = async (path: string) => {
    await engine.open(server.url + path);
    await until<boolean>(engine, `${path} comes alive`, islands, Boolean);
  };
  const heading = () => engine.evaluate(`document.querySelector('h1')?.innerText`);
  try {
    await to('');
    console.log(`  home: ${await heading()}`);
    await to('worksheets/capacity/');
    await fillJob(engine);
    // The same invented job has this answer in the tests of the sheet.
    const verdict = await until<string>(engine, 'a verdict', bar, (text) => /^Cannot tell \d+ %: between/.test(text));
    console.log(`  capacity sheet: ${verdict}`);
    await until<string>(engine, 'kept', `document.querySelector('.job-line')?.innerText ?? ''`, (text) =>
      /Saved/.test(text),
    );
    await to('worksheets/moist-air/');
    const lines = await until<number>(engine, 'lines', `document.querySelectorAll('svg path').length`, (n) => n > 20);
    console.log(`  air chart: ${lines} lines`);
    // A page that is left while it still fetches complains.
    await until<string>(
      engine,
      'the note on its regions',
      `document.querySelector('.air .note')?.innerText ?? ''`,
      Boolean,
    );
    await to('method/measured-cooling/');
    const formulas = await until<number>(engine, 'formulas', `document.querySelectorAll('math').length`, (n) => n > 0);
    console.log(`  article: ${await heading()}, ${formulas} formulas`);
    await to('search/?q=bypass');
    const found = await until<number>(
      engine,
      'found',
      `document.querySelectorAll('.search-found a').length`,
      (n) => n > 0,
    );
    console.log(`  search: ${found} places`);
    await until<string>(
      engine,
      'saved',
      `document.querySelector('.frame-saved:not([hidden])')?.innerText ?? ''`,
      Boolean,
    );
    await server.close();
    await to('worksheets/capacity/');
    await until<string>(engine, 'the same answer without a signal', bar, (text) => text === verdict);
    console.log('  without a signal: the same job, the same answer');
    if (engine.complaints.length > 0) throw new Error(engine.complaints.join('\n'));
  } finally {
    await server.close();
  }
}

const engines = [{ name: 'Firefox', here: firefoxHere, start: firefox }];
for (const { name, here, start } of engines) {
  const program = here();
  if (program === undefined) {
    console.warn(`SKIPPED: ${name} is not installed here. Nothing was tried in it.`);
    continue;
  }
  console.log(name);
  const engine = await start(program);
  try {
    await journey(engine);
  } catch (error) {
    console.error(error, engine.complaints);
    process.exitCode = 1;
  } finally {
    await engine.close();
  }
}
