import { expect, it } from 'vitest';
import { rehypeTableScroll } from '../../src/build/tableScroll.mjs';

const element = (tagName: string, ...children: unknown[]) => ({ type: 'element', tagName, properties: {}, children });
const heading = (value: string) => element('h2', { type: 'text', value });

it('a table stands in a region of its own, named after the heading above it', () => {
  const tree = { type: 'root', children: [heading('Costs'), element('table'), element('div', element('table'))] };
  rehypeTableScroll()(tree);
  const [, first, second] = tree.children as {
    tagName: string;
    properties: object;
    children: { properties: object }[];
  }[];
  expect(first).toMatchObject({
    tagName: 'div',
    properties: { className: ['table-scroll'], role: 'region', ariaLabel: 'Table: Costs', tabIndex: 0 },
    children: [{ tagName: 'table' }],
  });
  expect(second?.children[0]?.properties).toMatchObject({ ariaLabel: 'Table: Costs, 2' });
});
