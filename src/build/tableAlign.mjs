/** Rehype plugin: the alignment of a Markdown table's column as a class, since the site's policy forbids style attributes. */
export function rehypeTableAlign() {
  return function visit(node) {
    const align = node.properties?.align;
    if (align) {
      delete node.properties.align;
      node.properties.className = [...(node.properties.className ?? []), `align-${align}`];
    }
    node.children?.forEach(visit);
  };
}
