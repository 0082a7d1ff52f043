/** What a drawing is made of before anything renders it: strokes with a pen of the line language, and words. */

/** The classes of `src/styles/lines.css` that the air chart draws with. */
export type Pen =
  | 'line-saturation'
  | 'line-humidity'
  | 'line-wet-bulb'
  | 'line-enthalpy'
  | 'line-volume'
  | 'line-measured'
  | 'line-step'
  | 'line-beyond'
  | 'line-dimension'
  | 'line-end'
  | 'line-scale'
  | 'line-grid-fine'
  | 'mark-return'
  | 'mark-supply'
  | 'mark-coil'
  | 'arrow'
  | 'dot'
  | 'region'
  | 'outline';

export interface Stroke<Of extends string = Pen> {
  readonly pen: Of;
  /** Path data. */
  readonly d: string;
}

export type Anchor = 'start' | 'middle' | 'end';

export interface Word {
  readonly text: string;
  /** The anchor of the text, at half its height. */
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
  /** Degrees, clockwise. */
  readonly angle: number;
  readonly weight: 'plain' | 'quiet' | 'strong';
  /** Paper around it, where it stands on lines. */
  readonly clear: boolean;
}

export interface Drawing<Of extends string = Pen> {
  readonly strokes: readonly Stroke<Of>[];
  readonly words: readonly Word[];
}

export type Point = readonly [x: number, y: number];

/** The sheet that a chart is drawn on, px. */
export interface Paper {
  readonly width: number;
  readonly height: number;
  /** Size of the type. */
  readonly letter: number;
  /** The edges of the plot inside the drawing. */
  readonly plot: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
}

/** Coordinates to a tenth of a pixel: less would show, more would only be bytes. */
export const tenth = (value: number): number => Math.round(value * 10) / 10;

export const pathOf = (points: readonly Point[], close = false): string =>
  points.length === 0 ? '' : `M${points.map(([x, y]) => `${tenth(x)} ${tenth(y)}`).join('L')}${close ? 'Z' : ''}`;

/** A word upright and plain, unless said otherwise. */
export function word(text: string, x: number, y: number, more: Partial<Word> = {}): Word {
  return { text, x: tenth(x), y: tenth(y), anchor: 'start', angle: 0, weight: 'plain', clear: false, ...more };
}
