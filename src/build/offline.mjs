import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** For programs outside the site and for its host: a person without a signal has no use for them, and a host may not give them. */
const notForReaders = /^calc(\.|\/)|^_headers$|^\./;

const hash = (data) => createHash('sha256').update(data).digest('base64url').slice(0, 12);

async function filesUnder(root) {
  const entries = await readdir(root, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** Writes sw.js with the list of all built files and their hashes. Comes last in the list of integrations. */
export function offline() {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir);
        const files = {};
        let bytes = 0;
        for (const path of await filesUnder(root)) {
          if (path === 'sw.js' || notForReaders.test(path)) continue;
          const data = await readFile(join(root, path));
          files[path] = hash(data);
          bytes += data.length;
        }
        const list = JSON.stringify(files);
        const template = await readFile(new URL('./sw.js', import.meta.url), 'utf8');
        await writeFile(
          join(root, 'sw.js'),
          template.replace('__VERSION__', hash(list)).replace('__FILES__', () => list),
        );
        logger.info(`${Object.keys(files).length} files, ${Math.round(bytes / 1024)} KiB`);
      },
    },
  };
}
