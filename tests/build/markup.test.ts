/** No text becomes markup: what a person typed, pasted or opened goes into a page as text. */
import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const ways =
  /\.(inner|outer)HTML\b|insertAdjacentHTML|dangerouslySetInnerHTML|set:html|document\.write|\beval\(|new Function\(|createContextualFragment|DOMParser|srcdoc|javascript:|setHTMLUnsafe/;

/** Each file that makes markup out of text, and why it may. */
const allowed = {
  'src/components/Equation.astro': 'MathML out of an equation of our own, while the site is built',
};

test('nothing in the site makes markup or code out of text, but for what is listed with its reason', () => {
  const files = globSync('{src,content}/**/*.{ts,tsx,astro,mdx,mjs,js}', { cwd: root });
  expect(files.length).toBeGreaterThan(500);
  const found = files.filter((path) => ways.test(readFileSync(root + path, 'utf8')));
  expect(found.sort()).toEqual(Object.keys(allowed));
});
