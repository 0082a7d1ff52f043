/** The sheets come alive without holding up the finger that is already on them. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { closure, scriptsOf, textOf } from './builtSite.ts';
import { handle, linked } from './moistAir.ts';
import { longestTask, phone, ready, sheet, useSite } from './support.ts';

const { blank } = useSite();

test.each([
  ['the sheet', sheet],
  ['the explorer', 'worksheets/expected/'],
  ['the air chart', linked],
])('coming alive, %s does no task over 50 ms, as the least of five loads', async (_, path) => {
  const drawn = (page: Page) => (path === linked ? handle(page, 'a').waitFor() : Promise.resolve());
  expect(await longestTask(blank, path, 50, drawn)).toBeLessThanOrEqual(50);
});

// The store of the device is fetched beside the sheet: nobody waits for it to type or to read an answer.
test.each([
  ['the sheet', sheet, 1],
  ['the first page', '', 0],
])(
  'on %s the browser loads just the scripts that are weighed, and the store of the device',
  async (_, path, stores) => {
    const { page } = await blank(phone);
    const loaded: string[] = [];
    page.on(
      'request',
      (request) => request.resourceType() === 'script' && loaded.push(new URL(request.url()).pathname.slice(1)),
    );
    await page.goto(inject('url') + path);
    await ready(page);
    await page.evaluate(() => new Promise((resolve) => requestIdleCallback(resolve)));
    const weighed = closure(
      inject('dist'),
      scriptsOf(textOf(inject('dist'), `${path}index.html`)).map((url) => url.slice(1)),
    );
    const store = loaded.filter((one) => /\/kept\.[\w-]+\.js$/.test(one));
    expect(store).toHaveLength(stores);
    // What the store of the device brings with it is its own.
    const brought = closure(inject('dist'), store, weighed);
    expect(new Set(loaded.filter((one) => !brought.has(one)))).toEqual(weighed);
  },
);
