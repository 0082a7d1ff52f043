/** How a point of a drawing is taken hold of. */

/** Under a finger on a point the page does not scroll. The style that says so is not heeded on the shapes of a drawing. */
export function keepStill(event: TouchEvent): void {
  event.preventDefault();
}

/** The point follows this hand until it lets go, and the keys are the point's. Not for the second button of a mouse. */
export function takeHold(event: PointerEvent): void {
  if (event.button !== 0) return;
  const point = event.currentTarget as SVGElement;
  point.setPointerCapture(event.pointerId);
  point.focus({ preventScroll: true });
  event.preventDefault();
}

/** Whether this hand has hold of the point. */
export const holds = (event: PointerEvent): boolean =>
  (event.currentTarget as SVGElement).hasPointerCapture(event.pointerId);
