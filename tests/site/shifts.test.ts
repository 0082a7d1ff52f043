/** While a sheet comes alive nothing moves under the hand that is already on it: what comes late has its place kept. */
import { expect, inject, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { encodeJob } from '../../src/job/linkText.ts';
import { desk, phone, ready, sheet, useSite } from './support.ts';

const { blank } = useSite();

/** Sum of the areas that moved times how far, as shares of the screen: the browser's own measure. */
const most = 0.05;
/** So slow that each late part comes in a frame of its own. */
const slowedBy = 6;

interface Shift extends PerformanceEntry {
  readonly value: number;
  readonly hadRecentInput: boolean;
}
declare global {
  var shifts: number[];
}

const { invented: _, ...sent } = demoJob;
const link = `#job=${await encodeJob(sent, true)}`;

/** What has to be known before the first field, come in place of what was kept for it. */
const said = '.notices';

test.each([
  ['the sheet, empty', sheet, desk, '#step-sure > .step-head > span'],
  ['the sheet with the demo', `${sheet}?demo`, phone, said],
  ['the sheet with a link', sheet + link, phone, said],
  ['the explorer', 'worksheets/expected/?demo', phone, `${said} ~ .expected .expected-side`],
  ['the air chart', 'worksheets/moist-air/?demo', phone, said],
  ['the report of a link', `reports/view/${link}`, phone, `${said} ~ .report-page`],
])('nothing moves while a slow machine brings %s to life', async (_name, path, device, last) => {
  const { page } = await blank(device);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowedBy });
  await page.addInitScript(() => {
    globalThis.shifts = [];
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as Shift[]) if (!entry.hadRecentInput) shifts.push(entry.value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(inject('url') + path);
  await ready(page);
  await page.locator(last).first().waitFor();
  await page.waitForLoadState('networkidle');
  const moved = await page.evaluate(
    () => new Promise<number>((resolve) => requestIdleCallback(() => resolve(shifts.reduce((a, b) => a + b, 0)))),
  );
  console.log(`  ${path.replace(/=.*/, '')}: ${moved.toFixed(3)}`);
  expect(moved).toBeLessThanOrEqual(most);
});
