import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** From the top down: a layer imports only from itself and from layers below it. */
const layers = ['pages', 'layouts', 'components', 'islands', 'parts', 'charts', 'words', 'job', 'calc'] as const;
/** Pages and their frames are one floor. */
const above: Readonly<Record<string, readonly string[]>> = { layouts: ['pages'] };

/** The page of checks runs the same lists of outside figures as the tests. */
const exceptions = [{ from: /^src\/pages\//, to: /^tests\/published\// }];

interface Import {
  readonly file: string;
  readonly target: string;
}

function filesUnder(folder: string): string[] {
  return readdirSync(root + folder, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return filesUnder(path);
    return /\.(ts|tsx|mjs|astro)$/.test(entry.name) ? [path] : [];
  });
}

function importsOf(file: string): Import[] {
  const text = readFileSync(root + file, 'utf8');
  const found = text.matchAll(/(?:\bfrom\s*|\bimport\s*\(?\s*|new URL\(\s*)['"]([^'"]+)['"]/g);
  return [...found].map(([, target]) => ({ file, target: target! }));
}

/** A target as a path from the root; `null` for a package. */
function resolved({ file, target }: Import): string | null {
  if (target.startsWith('~/')) return `src/${target.slice(2)}`;
  if (!target.startsWith('.')) return null;
  return new URL(target, `file:///${file}`).pathname.slice(1);
}

const all = filesUnder('src').flatMap(importsOf);

describe('layers import only downwards', () => {
  test.each(layers)('src/%s', (layer) => {
    const allowed = [layer, ...layers.slice(layers.indexOf(layer) + 1), ...(above[layer] ?? []), 'styles'];
    const wrong = all
      .filter(({ file }) => file.startsWith(`src/${layer}/`))
      .filter((one) => {
        const path = resolved(one);
        if (path === null || exceptions.some(({ from, to }) => from.test(one.file) && to.test(path))) return false;
        return !allowed.some((name) => path.startsWith(`src/${name}/`)) && !path.startsWith('content/');
      });
    expect(wrong).toEqual([]);
  });

  test('nothing imports src/build, which is the configuration’s', () => {
    const wrong = all.filter((one) => !one.file.startsWith('src/build/') && resolved(one)?.startsWith('src/build/'));
    expect(wrong).toEqual([]);
  });
});

describe('calc and job stand on their own', () => {
  test('calc imports nothing but itself, job nothing but itself, calc and packages', () => {
    const wrong = all.filter((one) => {
      const path = resolved(one);
      if (one.file.startsWith('src/calc/')) return !path?.startsWith('src/calc/');
      if (one.file.startsWith('src/job/')) return path !== null && !/^src\/(job|calc)\//.test(path);
      return false;
    });
    expect(wrong).toEqual([]);
  });

  test('both use relative paths with their ending, so that they run as they stand', () => {
    const wrong = all
      .filter(({ file }) => /^src\/(calc|job)\//.test(file))
      .filter(({ target }) => target.startsWith('~/') || (target.startsWith('.') && !target.endsWith('.ts')));
    expect(wrong).toEqual([]);
  });

  test('calc runs as it stands in Node', () => {
    const code = `import('./src/calc/index.ts').then(({ moistAir }) => console.log(moistAir({ dryBulb: 25, relativeHumidity: 0.5 }).dryBulb))`;
    const out = execFileSync(`${root}node_modules/.bin/node`, ['-e', code], { cwd: root, encoding: 'utf8' });
    expect(out.trim()).toBe('25');
  });

  test('calc says nothing of a page: no document, window or storage', () => {
    const wrong = filesUnder('src/calc').filter((file) =>
      /\b(document|window|localStorage|navigator|fetch)\s*[.(]/.test(readFileSync(root + file, 'utf8')),
    );
    expect(wrong).toEqual([]);
  });
});

describe('no module needs itself', () => {
  /** What a file imports when it is loaded: not types alone, nor what it fetches later. */
  function needs(file: string): string[] {
    const text = readFileSync(root + file, 'utf8').replace(/^(import|export) type [^;]*;/gm, '');
    const found = text.matchAll(/\bfrom\s*['"]([^'"]+)['"]/g);
    return [...found].flatMap(([, target]) => resolved({ file, target: target! }) ?? []);
  }

  test('by any way round', () => {
    const done = new Set<string>();
    const rings: string[] = [];
    const follow = (file: string, way: readonly string[]): void => {
      if (way.includes(file)) rings.push([...way.slice(way.indexOf(file)), file].join(' → '));
      if (done.has(file) || way.includes(file)) return;
      for (const next of needed.get(file) ?? []) follow(next, [...way, file]);
      done.add(file);
    };
    const needed = new Map(filesUnder('src').map((file) => [file, needs(file)]));
    for (const file of needed.keys()) follow(file, []);
    expect(rings).toEqual([]);
  });
});
