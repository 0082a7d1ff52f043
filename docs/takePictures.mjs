/** Takes the pictures of README.md anew from the built site: `npx node docs/takePictures.mjs` after `npm run build`. */
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import sharp from 'sharp';
import { serve } from '../src/build/serve.mjs';
import { findBrowser } from '../tests/site/browser.ts';

const here = fileURLToPath(new URL('./', import.meta.url));

const pictures = [
  { name: 'sheet-on-a-phone', path: 'worksheets/capacity/?demo', width: 390, height: 844 },
  { name: 'sheet-on-a-desk', path: 'worksheets/capacity/?demo', width: 1440, height: 900 },
  { name: 'what-it-should-make', path: 'worksheets/expected/?demo', width: 1440, height: 900 },
  { name: 'report', path: 'reports/view/?demo', width: 1024, height: 900 },
];

const server = await serve();
const browser = await chromium.launch({ executablePath: findBrowser(), args: ['--no-sandbox'] });
for (const { name, path, width, height } of pictures) {
  const page = await browser.newPage({ viewport: { width, height }, serviceWorkers: 'block' });
  await page.goto(server.url + path, { waitUntil: 'networkidle' });
  // What comes late has no common sign by which it could be waited for.
  await page.waitForTimeout(4000);
  const picture = await page.screenshot();
  await sharp(picture).png({ palette: true, colours: 32, effort: 10 }).toFile(`${here}${name}.png`);
  await page.close();
}
await browser.close();
await server.close();
