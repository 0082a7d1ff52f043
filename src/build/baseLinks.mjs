const linking = ['href', 'src'];

/** Puts the base before a path that begins at the site's root; every other address is left as it is. */
function withBase(base, address) {
  const root = base.replace(/\/$/, '');
  const fromRoot = typeof address === 'string' && /^\/(?!\/)/.test(address);
  return fromRoot ? root + address : address;
}

/**
 * Rehype plugin: articles link as if the site stood at the root of its host; this puts the real base before such links.
 * Elements written as JSX in MDX carry their attributes in another shape than those written in Markdown.
 */
export function rehypeBaseLinks({ base }) {
  return function visit(node) {
    for (const name of linking) {
      if (node.properties?.[name]) node.properties[name] = withBase(base, node.properties[name]);
    }
    for (const attribute of node.attributes ?? []) {
      if (linking.includes(attribute.name)) attribute.value = withBase(base, attribute.value);
    }
    node.children?.forEach(visit);
  };
}
