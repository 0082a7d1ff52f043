import { describe, expect, it } from 'vitest';
import { rehypeBaseLinks } from '../../src/build/baseLinks.mjs';

const link = (href: string) => ({ type: 'element', tagName: 'a', properties: { href }, children: [] });
const after = (base: string, href: string) => {
  const node = link(href);
  rehypeBaseLinks({ base })({ type: 'root', children: [{ type: 'element', children: [node] }] });
  return node.properties.href;
};

describe('base links', () => {
  it.each([
    ['/sub/', '/method/', '/sub/method/'],
    ['/sub', '/method/#part', '/sub/method/#part'],
    ['/sub/', '/', '/sub/'],
    ['/', '/method/', '/method/'],
    ['/sub/', '#part', '#part'],
    ['/sub/', 'method/', 'method/'],
    ['/sub/', 'https://example.test/method/', 'https://example.test/method/'],
    ['/sub/', '//example.test/method/', '//example.test/method/'],
    ['/sub/', 'mailto:someone@example.test', 'mailto:someone@example.test'],
  ])('under %s turn %s into %s', (base, href, expected) => {
    expect(after(base, href)).toBe(expected);
  });

  it('reach the source of a picture', () => {
    const node = { type: 'element', tagName: 'img', properties: { src: '/icon.svg' }, children: [] };
    rehypeBaseLinks({ base: '/sub/' })({ type: 'root', children: [node] });
    expect(node.properties.src).toBe('/sub/icon.svg');
  });

  it('reach a link that MDX keeps as JSX, and leave its other attributes alone', () => {
    const attributes = [
      { type: 'mdxJsxAttribute', name: 'href', value: '/cautions/' },
      { type: 'mdxJsxAttribute', name: 'title', value: '/cautions/' },
    ];
    rehypeBaseLinks({ base: '/sub/' })({ type: 'root', children: [{ type: 'mdxJsxFlowElement', attributes }] });
    expect(attributes.map(({ value }) => value)).toEqual(['/sub/cautions/', '/cautions/']);
  });

  it('leave an attribute that is an expression as it is', () => {
    const value = { type: 'mdxJsxAttributeValueExpression', value: 'address' };
    const attributes = [{ type: 'mdxJsxAttribute', name: 'href', value }];
    rehypeBaseLinks({ base: '/sub/' })({ type: 'root', children: [{ type: 'mdxJsxTextElement', attributes }] });
    expect(attributes[0]?.value).toBe(value);
  });
});
