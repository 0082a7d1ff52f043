import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { filesUnder, importsOf, layers, root } from '../../src/build/imports.mjs';
import { housePicture } from '../../src/build/makeHousePicture.mjs';

/** Pages and their frames are one floor. */
const above: Readonly<Record<string, readonly string[]>> = { layouts: ['pages'] };

/** The page of checks runs the same lists of outside figures as the tests. */
const exceptions = [{ from: /^src\/pages\//, to: /^tests\/published\// }];

const all = filesUnder('src').flatMap(importsOf);

describe('layers import only downwards', () => {
  test.each(layers)('src/%s', (layer) => {
    const allowed = [layer, ...layers.slice(layers.indexOf(layer) + 1), ...(above[layer] ?? []), 'styles'];
    const wrong = all
      .filter(({ file }) => file.startsWith(`src/${layer}/`))
      .filter(({ file, path }) => {
        if (path === null || exceptions.some(({ from, to }) => from.test(file) && to.test(path))) return false;
        return !allowed.some((name) => path.startsWith(`src/${name}/`)) && !path.startsWith('content/');
      });
    expect(wrong).toEqual([]);
  });

  test('nothing imports src/build, which is the configuration’s', () => {
    const wrong = all.filter((one) => !one.file.startsWith('src/build/') && one.path?.startsWith('src/build/'));
    expect(wrong).toEqual([]);
  });
});

describe('calc and job stand on their own', () => {
  test('calc imports nothing but itself, job nothing but itself, calc and packages', () => {
    const wrong = all.filter((one) => {
      if (one.file.startsWith('src/calc/')) return !one.path?.startsWith('src/calc/');
      if (one.file.startsWith('src/job/')) return one.path !== null && !/^src\/(job|calc)\//.test(one.path);
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
  test('by any way round', () => {
    const done = new Set<string>();
    const rings: string[] = [];
    const follow = (file: string, way: readonly string[]): void => {
      if (way.includes(file)) rings.push([...way.slice(way.indexOf(file)), file].join(' → '));
      if (done.has(file) || way.includes(file)) return;
      for (const { path } of needed.get(file) ?? []) if (path) follow(path, [...way, file]);
      done.add(file);
    };
    const needed = new Map(filesUnder('src').map((file) => [file, importsOf(file).filter(({ loads }) => loads)]));
    for (const file of needed.keys()) follow(file, []);
    expect(rings).toEqual([]);
  });
});

test('the picture of the house in docs is drawn from these imports (npx node src/build/makeHousePicture.mjs)', () => {
  expect(readFileSync(`${root}docs/house.svg`, 'utf8')).toBe(housePicture());
});
