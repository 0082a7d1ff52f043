/** A linear scale in four lines: what a chart here needs of one, without the weight of a library. */
export function linear(domain: readonly [number, number], range: readonly [number, number]) {
  const slope = (range[1] - range[0]) / (domain[1] - domain[0] || 1);
  return (x: number) => range[0] + (x - domain[0]) * slope;
}

/** Coordinates to a tenth of a pixel: less would show, more would only be bytes. */
export const px = (x: number) => Math.round(x * 10) / 10;

/** The oblique end of a dimension line, 45°, centred on (x, y). */
export const oblique = (x: number, y: number, half = 4.2) =>
  `M${px(x - half)} ${px(y + half)}L${px(x + half)} ${px(y - half)}`;
