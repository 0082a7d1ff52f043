import { describe, expect, it } from 'vitest';
import { rehypeTableAlign } from '../../src/build/tableAlign.mjs';

const cell = (properties: Record<string, unknown>) => ({ type: 'element', tagName: 'td', properties, children: [] });
const table = (...cells: ReturnType<typeof cell>[]) => ({
  type: 'root',
  children: [{ type: 'element', tagName: 'table', properties: {}, children: cells }],
});

describe('the alignment of a table', () => {
  it.each(['left', 'center', 'right'])('%s becomes a class', (align) => {
    const node = cell({ align });
    rehypeTableAlign()(table(node));
    expect(node.properties).toEqual({ className: [`align-${align}`] });
  });

  it('keeps the classes that a cell already has', () => {
    const node = cell({ align: 'right', className: ['number'] });
    rehypeTableAlign()(table(node));
    expect(node.properties.className).toEqual(['number', 'align-right']);
  });

  it('leaves a cell without alignment alone', () => {
    const node = cell({});
    rehypeTableAlign()(table(node));
    expect(node.properties).toEqual({});
  });
});
