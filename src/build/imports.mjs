/** What imports what: for the test that holds the layers apart, and for the picture of the house. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/** From the top down: a layer imports only from itself and from layers below it. */
export const layers = /** @type {const} */ ([
  'pages',
  'layouts',
  'components',
  'islands',
  'parts',
  'charts',
  'words',
  'job',
  'calc',
]);

/** Every module below a folder, as a path from the root. @param {string} folder @returns {string[]} */
export function filesUnder(folder) {
  return readdirSync(root + folder, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return filesUnder(path);
    return /\.(ts|tsx|mjs|astro)$/.test(entry.name) ? [path] : [];
  });
}

/** A target as a path from the root; `null` for a package. @param {string} file @param {string} target */
function resolved(file, target) {
  if (target.startsWith('~/')) return `src/${target.slice(2)}`;
  if (!target.startsWith('.')) return null;
  return new URL(target, `file:///${file}`).pathname.slice(1);
}

/**
 * All imports of a file: those that it loads with (`static`), types alone, and what it fetches later or starts as a worker.
 * @param {string} file
 */
export function importsOf(file) {
  const text = readFileSync(root + file, 'utf8');
  const types = [...text.matchAll(/^(?:import|export) type [^;]*;/gm)].map((found) => found.index + found[0].length);
  const found = text.matchAll(/(?:(\bfrom\s*|\bimport\s+(?=['"]))|\bimport\s*\(\s*|new URL\(\s*)['"]([^'"]+)['"]/g);
  return [...found].map((one) => {
    const target = /** @type {string} */ (one[2]);
    const end = one.index + one[0].length;
    const isType = types.some((at) => at >= end && at <= end + 1);
    return { file, target, path: resolved(file, target), loads: one[1] !== undefined && !isType };
  });
}
