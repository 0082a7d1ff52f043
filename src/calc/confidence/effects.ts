import { CalcError, within } from '../errors.ts';
import type { ErrorSource } from '../types.ts';

/** What one cause does to a result: its standard uncertainty there, with its sign. */
export interface Effect {
  readonly name: string;
  readonly u: number;
  readonly degreesOfFreedom: number | null;
}

/** Works several results out of the inputs, in the order of both; what cannot be is not a number. Builds nothing. */
export type Work = (values: Float64Array, out: Float64Array) => void;

/** Step of the differences as a share of a cause's own uncertainty: hardly any of its bend is left, and no rounding shows. */
const step = 0.01;
/** Errors beyond this are slips; their squares still add up below it. */
const most = 1e12;

/**
 * The effects of every cause on every result, to first order (JCGM 100:2008, 5.1): a cause moves all of its inputs together,
 * by central differences, and where the work cannot go one way (humidity above saturation) by a difference to the other. An
 * effect that cannot be had either way is not a number. One list a result.
 */
export function effectsOf<Input extends string>(
  work: Work,
  inputs: readonly Input[],
  at: Float64Array,
  value: Float64Array,
  sources: readonly ErrorSource<Input>[],
): readonly Effect[][] {
  const found: Effect[][] = Array.from(value, () => []);
  const values = new Float64Array(at.length);
  const up = new Float64Array(value.length);
  const down = new Float64Array(value.length);
  for (const source of sources) {
    checkSource(source, inputs);
    const { name, degreesOfFreedom, u } = source;
    for (const [share, out] of [
      [step, up],
      [-step, down],
    ] as const) {
      values.set(at);
      inputs.forEach((input, i) => {
        const move = source.moves[input];
        if (move !== undefined) values[i] = (at[i] as number) + share * u * move;
      });
      work(values, out);
    }
    found.forEach((effects, i) => {
      const [low, middle, high] = [down[i] as number, value[i] as number, up[i] as number];
      const rise = u === 0 ? 0 : riseOf(low, middle, high);
      effects.push({ name, u: rise / step, degreesOfFreedom });
    });
  }
  return found;
}

/** The rise of a result in one step, from what lies on either side. */
function riseOf(low: number, middle: number, high: number): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return (high - low) / 2;
  return Number.isFinite(high) ? high - middle : middle - low;
}

/** Throws for a cause that no sum can be made with. */
export function checkSource<Input extends string>(
  { name, u, degreesOfFreedom, moves }: ErrorSource<Input>,
  inputs: readonly Input[],
): void {
  within(`${name}.u`, u, [0, most]);
  if (degreesOfFreedom !== null) within(`${name}.degreesOfFreedom`, degreesOfFreedom, [0.1, most]);
  for (const input in moves) {
    if (!inputs.includes(input)) throw new CalcError('missing', input, 0, 0, 0);
    within(`${name}.moves`, moves[input] as number, [-most, most]);
  }
}
