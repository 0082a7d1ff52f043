const isHeading = /^h[1-6]$/;
const textOf = (node) => (node.type === 'text' ? node.value : (node.children ?? []).map(textOf).join(''));

/** Rehype plugin: a Markdown table stands in a region that scrolls by itself where type is large, named after the heading above it. */
export function rehypeTableScroll() {
  return function wrapTables(tree) {
    const names = new Map();
    let heading = '';
    const nameOf = () => {
      const count = (names.get(heading) ?? 0) + 1;
      names.set(heading, count);
      return ['Table', heading && `: ${heading}`, count > 1 && `, ${count}`].filter(Boolean).join('');
    };
    const visit = (node) => {
      node.children?.forEach((child, index) => {
        if (isHeading.test(child.tagName)) heading = textOf(child);
        if (child.tagName !== 'table') {
          visit(child);
          return;
        }
        const properties = { className: ['table-scroll'], role: 'region', ariaLabel: nameOf(), tabIndex: 0 };
        node.children[index] = { type: 'element', tagName: 'div', properties, children: [child] };
      });
    };
    visit(tree);
  };
}
