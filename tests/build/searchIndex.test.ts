import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { searchFiles } from '../../src/build/searchIndex.mjs';

const page = (title: string, text: string) =>
  `<!doctype html><html lang="en"><head><title>${title}</title></head><body><main data-pagefind-body><h1>${title}</h1><p>${text}</p></main></body></html>`;

test('the same pages give the same index, byte by byte, without the interfaces that nobody uses', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'ton-for-ton-search-'));
  await writeFile(join(folder, 'one.html'), page('Wet bulb', 'A wet sock in moving air.'));
  await writeFile(join(folder, 'two.html'), page('Latent', 'The water that leaves the air.'));
  const [first, second] = [await searchFiles(folder), await searchFiles(folder)];
  await rm(folder, { recursive: true });
  expect(first.pages).toBe(2);
  expect(second).toEqual(first);
  const paths = first.files.map(({ path }: { path: string }) => path);
  expect(paths).toContain('pagefind.js');
  expect(paths.filter((path: string) => /-ui|highlight|\.css$/.test(path))).toEqual([]);
});
