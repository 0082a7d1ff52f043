import { mkdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { pathOf } from './files.mjs';

const list = fileURLToPath(new URL('../../.astro/chunks.json', import.meta.url));

/** Writes down which modules made up each script of the built site, for the test of the budgets. */
export function chunkList() {
  return {
    name: 'chunk-list',
    async generateBundle(_, bundle) {
      if (this.environment?.name !== 'client') return;
      const chunks = Object.values(bundle)
        .filter(({ type }) => type === 'chunk')
        .map(({ fileName, modules }) => [fileName, Object.keys(modules).map(pathOf).sort()]);
      await mkdir(dirname(list), { recursive: true });
      await writeFile(list, JSON.stringify(Object.fromEntries(chunks), null, 1));
    },
  };
}
