/** Points of the air chart under a mouse, a finger and the keys, and what a drag may touch. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { chart, chartOpener, handle, linked, middle, said, textField, typeReturn } from './moistAir.ts';
import { keptText, phone, ready, useSite } from './support.ts';

const { open } = useSite();
const openChart = chartOpener(open);

const frames = (page: Page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(null)))));

test('dragging a point moves it and everything that hangs on it, and is kept once, when the hand comes up', async () => {
  const page = await openChart(chart);
  await typeReturn(page);
  await keptText(page, '50');
  const at = await middle(page, 'entering');
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 60, at.y - 40, { steps: 4 });
  const under = await said(page, 'entering');
  expect(under).not.toBe('75.0 °F, 50.0 %');
  expect(await textField(page, 'field-entering.dryBulb').inputValue()).toBe(under.split(' ')[0]);
  await page.mouse.up();
  expect(await said(page, 'entering')).toBe(under);
  const [t] = under.split(' ');
  await keptText(page, t!);
  await page.reload();
  await ready(page);
  await expect.poll(() => said(page, 'entering')).toBe(under);
});

test('a point that is dragged beyond saturation slides along it, and one dragged off the chart stops at its edge', async () => {
  const page = await openChart(linked);
  const at = await middle(page, 'entering');
  const paper = (await page.locator('.air-drawing').boundingBox())!;
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x - 200, at.y - 260, { steps: 6 });
  expect(await said(page, 'entering')).toMatch(/, (99\.\d|100\.0) %$/);
  await page.mouse.move(paper.x + paper.width + 300, at.y, { steps: 6 });
  expect(await said(page, 'entering')).toMatch(/^100\.0 °F/);
  await page.mouse.up();
});

test('Escape in the middle of a drag puts the point back', async () => {
  const page = await openChart(linked);
  const at = await middle(page, 'entering');
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 50, at.y + 30, { steps: 3 });
  expect(await said(page, 'entering')).not.toBe('75.0 °F, 50.0 %');
  await page.keyboard.press('Escape');
  expect(await said(page, 'entering')).toBe('75.0 °F, 50.0 %');
  await page.mouse.move(at.x + 90, at.y + 60);
  await page.mouse.up();
  expect(await said(page, 'entering')).toBe('75.0 °F, 50.0 %');
});

/** Touches as the browser makes them, so that it decides itself between a drag and a scroll. */
async function finger(page: Page, path: readonly { readonly x: number; readonly y: number }[]): Promise<void> {
  const client = await page.context().newCDPSession(page);
  for (const [index, at] of path.entries()) {
    const type = index === 0 ? 'touchStart' : 'touchMove';
    await client.send('Input.dispatchTouchEvent', { type, touchPoints: [at] });
  }
  await client.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await client.detach();
}

test('a finger drags a point, and scrolls the page from anywhere else on the chart', async () => {
  const page = await openChart(linked, phone);
  await handle(page, 'a').scrollIntoViewIfNeeded();
  const at = await middle(page, 'a');
  await finger(
    page,
    [0, 1, 2, 3, 4, 5].map((step) => ({ x: at.x - 8 * step, y: at.y + 4 * step })),
  );
  await expect.poll(() => said(page, 'a')).not.toBe('95.0 °F, 75.0 °F wet bulb');
  const before = await page.evaluate(() => scrollY);
  const paper = (await page.locator('.air-drawing').boundingBox())!;
  await finger(
    page,
    [0, 1, 2, 3, 4, 5].map((step) => ({ x: paper.x + 20, y: paper.y + 200 - 20 * step })),
  );
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before + 40);
});

test('arrows move a point by a tenth of a unit, Shift by ten of them, Home and End to the edges, Escape back', async () => {
  const page = await openChart(linked);
  await handle(page, 'entering').focus();
  const after = async (key: string) => {
    await page.keyboard.press(key);
    return said(page, 'entering');
  };
  expect(await after('ArrowRight')).toBe('75.1 °F, 50.0 %');
  expect(await after('Shift+ArrowRight')).toBe('76.1 °F, 50.0 %');
  expect(await after('ArrowUp')).toBe('76.1 °F, 50.1 %');
  expect(await after('Shift+ArrowDown')).toBe('76.1 °F, 49.1 %');
  expect(await after('PageUp')).toBe('76.1 °F, 50.1 %');
  expect(await after('Home')).toBe('40.0 °F, 50.1 %');
  expect(await after('End')).toBe('100.0 °F, 50.1 %');
  expect(await after('Escape')).toBe('75.0 °F, 50.0 %');
  for (let press = 0; press < 60; press++) await page.keyboard.press('Shift+ArrowUp');
  expect(await said(page, 'entering')).toBe('75.0 °F, 100.0 %');
});

test('Tab goes from point to point, and to the cross-hair', async () => {
  const page = await openChart(linked);
  await handle(page, 'entering').focus();
  const names = [];
  for (let press = 0; press < 3; press++) {
    names.push(await page.evaluate(() => document.activeElement?.getAttribute('aria-label')));
    await page.keyboard.press('Tab');
  }
  expect(names).toEqual(['Return air', 'Supply air', 'Outdoor air']);
  await handle(page, 'entering').focus();
  await page.keyboard.press('Shift+Tab');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Cross-hair');
});

test('a state given by its wet bulb keeps it under the arrows, and slides along saturation where it must', async () => {
  const page = await openChart(linked);
  await handle(page, 'a').focus();
  await page.keyboard.press('ArrowLeft');
  expect(await said(page, 'a')).toBe('94.9 °F, 75.0 °F wet bulb');
  await page.keyboard.press('Home');
  expect(await said(page, 'a')).toBe('40.0 °F, 40.0 °F wet bulb');
});

/** Counts how often the page is laid out and styled. */
async function counter(page: Page) {
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable');
  return async () => {
    const { metrics } = await client.send('Performance.getMetrics');
    const of = (name: string) => metrics.find((metric) => metric.name === name)!.value;
    return { layouts: of('LayoutCount'), styles: of('RecalcStyleCount') };
  };
}

/** Drags a point in ten steps. Gives the most layouts and passes of styles that any step took. */
async function dragged(page: Page, key: string): Promise<{ layouts: number; styles: number }> {
  const at = await middle(page, key);
  const counts = await counter(page);
  const most = { layouts: 0, styles: 0 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x - 6, at.y + 6);
  await frames(page);
  for (let step = 1; step <= 10; step++) {
    const before = await counts();
    await page.mouse.move(at.x - 6 - 3 * step, at.y + 6 + 2 * step);
    await frames(page);
    const now = await counts();
    most.layouts = Math.max(most.layouts, now.layouts - before.layouts);
    most.styles = Math.max(most.styles, now.styles - before.styles);
  }
  await page.mouse.up();
  return most;
}

test('each step of a drag is one layout and one pass of styles', async () => {
  const page = await openChart(linked);
  expect(await dragged(page, 'a')).toEqual({ layouts: 1, styles: 1 });
});

test('a drag touches nothing that does not move: neither the lines nor the other points and their steps', async () => {
  const page = await openChart(linked);
  await page.evaluate(() => {
    const touched: string[] = [];
    Object.assign(globalThis, { touched });
    const still = [
      '.air-drawing > g',
      '[data-handle="leaving"]',
      '#point-leaving',
      '#point-entering',
      '.air-tools',
    ].map((one) => document.querySelector(one));
    new MutationObserver((records) => {
      for (const { target } of records) {
        // The key that takes a move back comes when the hand has let go.
        if (still.some((one) => one?.contains(target)) && !(target as Element).closest('.air-undo'))
          touched.push(String(target.parentElement?.outerHTML).slice(0, 120));
      }
    }).observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
  });
  await dragged(page, 'a');
  expect(await page.evaluate(() => (globalThis as unknown as { touched: string[] }).touched)).toEqual([]);
});

test('the demo is looked at: dragging asks, and nothing moves', async () => {
  const page = await openChart(`${chart}?demo`);
  await expect.poll(() => said(page, 'entering')).toBe('75.0 °F, 50.0 %');
  const at = await middle(page, 'entering');
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 40, at.y, { steps: 3 });
  await page.mouse.up();
  await page.locator('dialog[open]').waitFor();
  await page.keyboard.press('Escape');
  expect(await said(page, 'entering')).toBe('75.0 °F, 50.0 %');
});
