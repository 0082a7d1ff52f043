/** The lines of a chart: each family from its own equation, cut at the frame and at saturation. */
import type { Box } from '../box.ts';
import type { Point } from '../shapes.ts';
import type { ChartFrame } from './frame.ts';
import { labelled } from './lineLabels.ts';
import { linesOf } from './lines.ts';

/** What can be switched on and off. */
export type Family = 'saturation' | 'relativeHumidity' | 'wetBulb' | 'enthalpy' | 'specificVolume' | 'grid';
/** What a line holds constant; saturation holds a relative humidity of one. */
export type LineFamily = Exclude<Family, 'grid'> | 'dryBulb' | 'humidityRatio';

/** A text along a line: its middle, and the angle in degrees, clockwise as on screen. */
export interface LineLabel {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  /** The tick of a scale that stands off its lines. */
  readonly tick?: readonly [Point, Point];
}

export interface ChartLine {
  readonly family: LineFamily;
  /** SI. */
  readonly value: number;
  /** Number and unit, as it is said. */
  readonly label: string;
  /** Of the drawing, to a tenth of a pixel. */
  readonly points: readonly Point[];
  /** What is written along the line; a line without room for it has none. */
  readonly labels: readonly LineLabel[];
}

/** The families that are on at first. */
export const firstFamilies: readonly Family[] = ['saturation', 'relativeHumidity', 'wetBulb'];
export const allFamilies: readonly Family[] = [...firstFamilies, 'enthalpy', 'specificVolume', 'grid'];

/**
 * Every line of the families, with its labels; nothing is written where one of `taken` stands. The order of `families` does
 * not matter.
 */
export function chartLines(
  frame: ChartFrame,
  families: readonly Family[],
  taken: readonly Box[] = [],
): readonly ChartLine[] {
  const shown = allFamilies.filter((family) => families.includes(family));
  return labelled(
    frame,
    shown.flatMap((family) => linesOf(frame, family)),
    taken,
  );
}
