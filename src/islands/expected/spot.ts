/** The spot of a pointer in the drawing. */
export function spotIn(svg: SVGSVGElement, event: PointerEvent): [x: number, y: number] {
  const { left, top, width } = svg.getBoundingClientRect();
  const scale = svg.viewBox.baseVal.width / width;
  return [(event.clientX - left) * scale, (event.clientY - top) * scale];
}
