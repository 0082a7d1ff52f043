import { CalcError, within } from '../errors.ts';
import { airflowLimits, practice } from './limits.ts';

/**
 * Log-Tchebycheff positions, fractions of the inside dimension from one wall, by the number of lines (`traverseRules`): the
 * printed three figures with a fourth from the rule itself, for 0.437 of six lines is 0.4375 cut short. The outermost stands at
 * 1/(n·e), where a logarithmic profile has the mean of its strip; the others are Chebyshev's points for equal weights between.
 */
export const logTchebycheff = {
  5: [0.0736, 0.2879, 0.5, 0.7121, 0.9264],
  6: [0.0613, 0.2351, 0.4375, 0.5625, 0.7649, 0.9387],
  7: [0.0526, 0.2027, 0.3662, 0.5, 0.6338, 0.7973, 0.9474],
} as const;

/** Log-linear positions, fractions of the diameter from one wall, by the number of points (`traverseRules`). */
export const logLinear = {
  6: [0.0321, 0.1349, 0.3207, 0.6793, 0.8651, 0.9679],
  8: [0.021, 0.117, 0.184, 0.345, 0.655, 0.816, 0.883, 0.979],
  10: [0.019, 0.0765, 0.1533, 0.2171, 0.3608, 0.6392, 0.7829, 0.8467, 0.9235, 0.981],
} as const;

export type LineCount = keyof typeof logTchebycheff;
export type PointCount = keyof typeof logLinear;

/** The inside of a duct, m, and how it is traversed; the usual counts for its size where they are left out. */
export type Section =
  | {
      readonly shape: 'rectangular';
      readonly width: number;
      readonly height: number;
      /** Holes along the width, and points down each of them. */
      readonly lines?: LineCount;
      readonly points?: LineCount;
    }
  | {
      readonly shape: 'round';
      readonly diameter: number;
      /** Diameters, and points on each of them. */
      readonly lines?: 2 | 3;
      readonly points?: PointCount;
    };

/** Where the tip of the probe stands: `depth` from the inside of the wall with the hole, x and y from the upper left corner, m. */
export interface TraversePoint {
  readonly depth: number;
  readonly x: number;
  readonly y: number;
}

/** One hole and the points that are reached through it. */
export interface TraverseLine {
  /** Of the hole, m from the upper left corner. */
  readonly x: number;
  readonly y: number;
  /** How a diameter lies, degrees clockwise from upright; 0 in a rectangular duct. */
  readonly angle: number;
  readonly points: readonly TraversePoint[];
}

export interface TraversePoints {
  /** m². */
  readonly area: number;
  /** Diameter of the circle of the same area, m. */
  readonly diameter: number;
  readonly lines: readonly TraverseLine[];
}

/** Lines for a side: 5 below 760 mm (30 in), 6 up to 915 mm (36 in), 7 above (`traverseRules`). */
export function linesFor(side: number): LineCount {
  if (side < practice.sixLinesFrom) return 5;
  return side <= practice.sevenLinesAbove ? 6 : 7;
}

/** Points for a diameter: 6 up to 254 mm (10 in), 8 above. Common practice, no source. */
export function pointsFor(diameter: number): PointCount {
  return diameter <= practice.sixPointsUpTo ? 6 : 8;
}

/**
 * Where to read the velocities of a duct: log-Tchebycheff in a rectangular one (holes along the top), log-linear on two or three
 * diameters in a round one. m. Throws a `CalcError` for a side out of range or a count that the rule does not have.
 * ISO 3966, ASHRAE 41.2 and 111.
 */
export function traversePoints(section: Section): TraversePoints {
  const lines = section.shape === 'rectangular' ? rectangularLines(section) : roundLines(section);
  const area = section.shape === 'rectangular' ? section.width * section.height : (Math.PI * section.diameter ** 2) / 4;
  return { area, diameter: Math.sqrt((4 * area) / Math.PI), lines };
}

function rectangularLines(section: Extract<Section, { shape: 'rectangular' }>): readonly TraverseLine[] {
  const { width, height, lines = linesFor(width), points = linesFor(height) } = section;
  within('width', width, airflowLimits.side);
  within('height', height, airflowLimits.side);
  const down = positions('points', logTchebycheff, points);
  return positions('lines', logTchebycheff, lines).map((across) => ({
    x: across * width,
    y: 0,
    angle: 0,
    points: down.map((fraction) => ({ depth: fraction * height, x: across * width, y: fraction * height })),
  }));
}

function roundLines(section: Extract<Section, { shape: 'round' }>): readonly TraverseLine[] {
  const { diameter, lines = 2, points = pointsFor(diameter) } = section;
  within('diameter', diameter, airflowLimits.side);
  if (lines !== 2 && lines !== 3) throw new CalcError('outOfRange', 'lines', lines, 2, 3);
  const fractions = positions('points', logLinear, points);
  return Array.from({ length: lines }, (_, i) => {
    const angle = (i * 180) / lines;
    const at = (depth: number): TraversePoint => {
      const inward = diameter / 2 - depth;
      const turned = (angle * Math.PI) / 180;
      return {
        depth,
        x: diameter / 2 + inward * Math.sin(turned),
        y: diameter / 2 - inward * Math.cos(turned),
      };
    };
    const { x, y } = at(0);
    return { x, y, angle, points: fractions.map((fraction) => at(fraction * diameter)) };
  });
}

function positions<Count extends number>(
  quantity: string,
  rule: Readonly<Record<Count, readonly number[]>>,
  count: Count,
): readonly number[] {
  const found = rule[count] as readonly number[] | undefined;
  if (found) return found;
  const counts = Object.keys(rule).map(Number);
  throw new CalcError('outOfRange', quantity, count, Math.min(...counts), Math.max(...counts));
}
