const beforeUnit = /(\d) (?=(?:%|°[FC]|(?:Btu\/h|cfm|kW|W|ft|ppm|lb|Pa)(?![\w/])))/g;
const asWritten = new Set(['code', 'pre', 'math']);

/** Rehype plugin: a number and its unit stay on one line. Articles are written with plain spaces. */
export function rehypeNoBreakUnits() {
  return function visit(node) {
    if (asWritten.has(node.tagName)) return;
    if (node.type === 'text') node.value = node.value.replace(beforeUnit, '$1\u00a0');
    node.children?.forEach(visit);
  };
}
