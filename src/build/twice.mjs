/**
 * Builds the site twice, into two folders, and compares every file byte by byte: what was published can be built again and be the same.
 * `npm run twice`; outside the test command, because it takes as long as two builds.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const astro = fileURLToPath(import.meta.resolve('astro/package.json')).replace('package.json', 'bin/astro.mjs');

function built() {
  const folder = mkdtempSync(join(tmpdir(), 'ton-for-ton-twice-'));
  const { status } = spawnSync(process.execPath, [astro, 'build', '--outDir', folder], { cwd: root, stdio: 'ignore' });
  if (status !== 0) throw new Error('the build failed');
  return folder;
}

const filesUnder = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)));

const [first, second] = [built(), built()];
const files = [...new Set([first, second].flatMap(filesUnder))].sort();
const bytes = (folder, path) => {
  try {
    return readFileSync(join(folder, path));
  } catch {
    return null;
  }
};
const different = files.filter((path) => {
  const [one, other] = [bytes(first, path), bytes(second, path)];
  return !one || !other || !one.equals(other);
});
if (different.length > 0) {
  console.error(`${different.length} of ${files.length} files differ; the folders ${first} and ${second} stay:`);
  console.error(different.join('\n'));
  process.exitCode = 1;
} else {
  console.log(`${files.length} files, all the same twice`);
  for (const folder of [first, second]) rmSync(folder, { recursive: true });
}
