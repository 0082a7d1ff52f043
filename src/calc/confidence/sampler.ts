import { CalcError } from '../errors.ts';
import type { ErrorSource, Shape } from '../types.ts';
import { checkSource } from './effects.ts';
import { random } from './random.ts';

/** Fills the inputs, in their order, with one draw. Builds nothing. */
export type Sampler = (values: Float64Array) => void;

/** More degrees of freedom than this are as good as no end to them. */
const mostSpread = 200;
/** How many draws may be thrown away for each that is kept before the readings themselves must be wrong. */
const mostRedrawn = 20;

const shapes: readonly Shape[] = ['rectangular', 'triangular', 'normal'];

/**
 * Draws of the inputs around a point, each cause drawn once and all of its inputs moved together (JCGM 101:2008, 6.4). Causes
 * of one name with few degrees of freedom share one factor √(ν/χ²), so that what was found together has the tails of Student's
 * t together. The causes stand in flat lists: this is asked for a hundred thousand draws.
 */
export function sampler<Input extends string>(
  inputs: readonly Input[],
  at: Float64Array,
  sources: readonly ErrorSource<Input>[],
  seed: number,
): Sampler {
  const { rectangular, triangular, normal, spread } = random(seed);
  const spreads = spreadNames(sources);
  const degrees = [...spreads.values()];
  const factors = new Float64Array(degrees.length);
  const shape = Int32Array.from(sources, (source) => shapes.indexOf(source.shape));
  const shared = Int32Array.from(sources, ({ name }) => [...spreads.keys()].indexOf(name));
  /** Cause by cause the inputs that it moves, and by how much an error of one standard uncertainty moves them. */
  const moves = sources.map((source) => {
    checkSource(source, inputs);
    return inputs.flatMap((input, i) => {
      const move = source.moves[input];
      return move === undefined ? [] : [{ input: i, by: move * source.u }];
    });
  });
  const ends = Int32Array.from(moves, (_, i) => moves.slice(0, i + 1).flat().length);
  const moved = Int32Array.from(moves.flat(), ({ input }) => input);
  const by = Float64Array.from(moves.flat(), (move) => move.by);
  return (values) => {
    for (let i = 0; i < at.length; i++) values[i] = at[i] as number;
    for (let i = 0; i < factors.length; i++) factors[i] = spread(degrees[i] as number);
    let j = 0;
    for (let i = 0; i < shape.length; i++) {
      const kind = shape[i];
      let error = kind === 0 ? rectangular() : kind === 1 ? triangular() : normal();
      if ((shared[i] as number) >= 0) error *= factors[shared[i] as number] as number;
      for (; j < (ends[i] as number); j++) {
        const input = moved[j] as number;
        values[input] = (values[input] as number) + error * (by[j] as number);
      }
    }
  };
}

/** The names whose causes have few degrees of freedom, and how many, as a whole number. */
function spreadNames(sources: readonly ErrorSource<string>[]): ReadonlyMap<string, number> {
  const few = sources.filter(({ degreesOfFreedom }) => degreesOfFreedom !== null && degreesOfFreedom <= mostSpread);
  return new Map(few.map(({ name, degreesOfFreedom }) => [name, Math.max(1, Math.floor(degreesOfFreedom ?? 1))]));
}

/**
 * Takes draws until `draws` of them have been kept; `keep` says whether a draw can be, and does its work. Gives how many were
 * drawn again. Throws `hardlyPossible` when nearly all must be.
 */
export function take(draw: Sampler, values: Float64Array, draws: number, keep: (kept: number) => boolean): number {
  let redrawn = 0;
  for (let kept = 0; kept < draws; ) {
    draw(values);
    if (keep(kept)) kept++;
    else if (++redrawn > mostRedrawn * draws) throw new CalcError('hardlyPossible', 'draws', redrawn, 0, draws);
  }
  return redrawn;
}
