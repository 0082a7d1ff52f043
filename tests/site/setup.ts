/** Once for all files: a copy of the built site that no later build disturbs, served on this machine, and one browser. */
import { cp, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { serve } from '../../src/build/serve.mjs';
import { findBrowser, quiet } from './browser.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built site. */
    readonly dist: string;
    /** The modules in each of its scripts. */
    readonly chunks: Readonly<Record<string, readonly string[]>>;
    /** Its address, with a slash at the end. */
    readonly url: string;
    /** Where the browser listens. */
    readonly browser: string;
  }
}

const built = fileURLToPath(new URL('../../dist', import.meta.url));
const chunkList = new URL('../../.astro/chunks.json', import.meta.url);

export default async function setup(project: TestProject) {
  const dist = await mkdtemp(join(tmpdir(), 'ton-for-ton-'));
  await cp(built, dist, { recursive: true });
  const server = await serve({ dir: dist });
  const browser = await chromium.launchServer({ executablePath: findBrowser(), args: quiet });
  project.provide('dist', dist);
  project.provide('chunks', JSON.parse(await readFile(chunkList, 'utf8')));
  project.provide('url', server.url);
  project.provide('browser', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await server.close();
    await rm(dist, { recursive: true });
  };
}
