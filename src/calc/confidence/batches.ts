/** How many parts a record is cut into: the scatter of their means is what a mean is known to. */
export const batchCount = 5;

export interface BatchMeans {
  readonly mean: number;
  /** Standard uncertainty of the mean. */
  readonly u: number;
  readonly degreesOfFreedom: number;
  /** How far the mean of each part lies from theirs together. */
  readonly parts: readonly number[];
}

/**
 * The mean of a record in the order of time and what it is known to. Readings one after the other are not independent, so s/√n
 * would promise too much: the record is cut into five parts, and their means are taken as five readings (JCGM 100:2008, 4.2,
 * on batch means; ν = 4). With fewer than five readings each is a part of its own; `null` for a single one.
 */
export function batchMeans(values: readonly number[]): BatchMeans | null {
  const count = Math.min(batchCount, values.length);
  if (count < 2) return null;
  const means = Array.from({ length: count }, (_, i) => {
    const from = Math.round((i * values.length) / count);
    return meanOf(values.slice(from, Math.round(((i + 1) * values.length) / count)));
  });
  const middle = meanOf(means);
  const parts = means.map((mean) => mean - middle);
  const square = parts.reduce((sum, part) => sum + part * part, 0);
  return { mean: meanOf(values), u: Math.sqrt(square / (count - 1) / count), degreesOfFreedom: count - 1, parts };
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
