import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as pagefind from 'pagefind';

/** Its ready-made interfaces and what a page without a language would need: this site has a list of its own, in one language. */
const notNeeded = /^pagefind-(ui|modular-ui|component-ui|highlight)\.|^wasm\.unknown\./;

/** Index and engine of the search over the pages in a folder: their paths and contents, the same for the same pages. */
export async function searchFiles(folder) {
  const { index, errors } = await pagefind.createIndex({
    forceLanguage: 'en',
    // TeX behind a formula, the definition that a term shows, sources in the margin, the bar at the foot of a phone.
    excludeSelectors: ['math annotation', '.term-says', '.source', '.only-si', '.answer-bar'],
  });
  if (!index) throw new Error(errors.join('\n'));
  const added = await index.addDirectory({ path: folder });
  if (added.errors.length > 0) throw new Error(added.errors.join('\n'));
  const { files } = await index.getFiles();
  await pagefind.close();
  return { pages: added.page_count, files: files.filter(({ path }) => !notNeeded.test(path)) };
}

/** Writes the search under pagefind/ of the built site; comes before the list for use without a signal. */
export function searchIndex() {
  return {
    name: 'search-index',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir);
        const { pages, files } = await searchFiles(root);
        for (const { path, content } of files) {
          const file = join(root, 'pagefind', path);
          await mkdir(dirname(file), { recursive: true });
          await writeFile(file, content);
        }
        logger.info(`${pages} pages`);
      },
    },
  };
}
