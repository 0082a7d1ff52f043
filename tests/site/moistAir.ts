/** What the tests of the air chart share: its page, its points, and how they are spoken. */
import type { BrowserContextOptions, Page } from 'playwright-core';
import { desk, plain } from './support.ts';

export const chart = 'worksheets/moist-air/';
/** Return and supply air, one state, and the mixing of two of them. */
export const linked = `${chart}?v=1&r=75F,50rh&s=56F,88rh&a=95F,75Fwb,Outdoor+air&p1=mixing,a,r,,,400cfm,800cfm`;

export const handle = (page: Page, key: string) => page.locator(`[data-handle="${key}"]`);
export const textField = (page: Page, id: string) => page.locator(`[id="${id}"]`);

/** The figures of a point, as they are spoken. */
export async function said(page: Page, key: string): Promise<string> {
  return plain((await handle(page, key).getAttribute('aria-valuetext')) ?? '');
}

/** A way to open the chart that waits until it is drawn. */
export function chartOpener(open: (path: string, options?: BrowserContextOptions) => Promise<Page>) {
  return async (path: string, options: BrowserContextOptions = desk): Promise<Page> => {
    const page = await open(path, options);
    await page.locator('.air-drawing').waitFor();
    // The job's own process comes after the chart, and the lines are written on once more around it.
    if (path === linked) await page.locator('.air-processes .line-measured').waitFor();
    return page;
  };
}

export async function typeReturn(page: Page, dryBulb = '75', humidity = '50'): Promise<void> {
  await page.locator('#point-entering .step-key').click();
  await textField(page, 'field-entering.dryBulb').fill(dryBulb);
  await textField(page, 'field-entering.relativeHumidity').fill(humidity);
  await handle(page, 'entering').waitFor();
}

/** The middle of a handle on the screen, once it has rested there for three frames: late parts of the page may push it. */
export async function middle(page: Page, key: string): Promise<{ x: number; y: number }> {
  const grip = handle(page, key).locator('.air-grip');
  await grip.waitFor();
  return grip.evaluate((element) => {
    const here = () => {
      const { x, y, width, height } = element.getBoundingClientRect();
      return { x: x + width / 2, y: y + height / 2 };
    };
    return new Promise<{ x: number; y: number }>((done) => {
      let before = here();
      let rested = 0;
      const look = () => {
        const now = here();
        rested = now.x === before.x && now.y === before.y ? rested + 1 : 0;
        before = now;
        if (rested < 3) requestAnimationFrame(look);
        else done(now);
      };
      requestAnimationFrame(look);
    });
  });
}

/** Drags a point with the mouse, and lets it go. */
export async function dragBy(page: Page, key: string, dx: number, dy: number): Promise<void> {
  const at = await middle(page, key);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + dx, at.y + dy, { steps: 4 });
  await page.mouse.up();
}
