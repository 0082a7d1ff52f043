/** The classes of `src/styles/lines.css` that a surface, its slices and its scale are drawn with; a region is filled with a hatch. */
import type { Drawing, Stroke } from '../shapes.ts';

export type SurfacePen =
  | 'line-contour'
  | 'line-cell'
  | 'line-measured'
  | 'line-should'
  | 'line-dimension'
  | 'line-end'
  | 'line-scale'
  | 'line-grid-fine'
  | 'dot'
  | 'ring'
  | 'aim'
  | 'outline'
  | 'blank'
  | 'outline blank'
  | 'region'
  | 'region-should'
  | 'region-outside'
  | `band-${number}`;

export type SurfaceStroke = Stroke<SurfacePen>;
export type SurfaceDrawing = Drawing<SurfacePen>;
