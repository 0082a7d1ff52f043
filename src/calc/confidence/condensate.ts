import { heatVapor, vaporEnthalpy } from '../constants.ts';
import { within } from '../errors.ts';
import type { Budget, ErrorSource, MoistAir } from '../types.ts';
import { budget } from './budget.ts';
import { limited } from './limited.ts';

/** Water caught from the drain over a time. */
export interface Catch {
  /** kg. */
  readonly mass: number;
  /** s. */
  readonly duration: number;
  /** Half-width of the scale or the jug, kg; `null`: the usual one. */
  readonly massLimit: number | null;
}

/** Common practice, no source. Relative, but where it says otherwise. */
export const usualCatch = {
  /** A jug read at a mark, or a kitchen scale. */
  mass: 0.02,
  /** Starting and stopping between drops, s. */
  stopwatch: 15,
  /** What stays in the pan, the trap and the pipe differs from start to end; a drip is never quite even. */
  drain: 0.1,
  /** How long the drip takes to become even, s: the coil has to be wet all over first. */
  wait: 1200,
} as const;

export interface CondensateCheck {
  /** Water caught, kg/s. */
  readonly caught: Budget;
  /** Caught less what the probes say, kg/s. */
  readonly difference: Budget;
  readonly outcome: 'agrees' | 'less' | 'more';
  /** The latent load that the catch stands for, W: water vapour of the entering air made liquid, as the rating counts it. */
  readonly latent: number;
}

type Input = 'mass' | 'duration' | 'drain' | 'probes';

/**
 * A timed catch against the water that the probes see leave the air (`ranges.condensate` of the assessment), each with its own
 * uncertainty: they agree when nothing lies in the range of their difference that is all on one side of none. Throws a
 * `CalcError` for a mass or a time that is not above nothing.
 */
export function condensateCheck(
  { mass, duration, massLimit }: Catch,
  probes: Budget,
  entering: Pick<MoistAir, 'dryBulb'>,
): CondensateCheck {
  within('mass', mass, [1e-6, 1e4]);
  within('duration', duration, [1, 1e6]);
  const limit = massLimit ?? usualCatch.mass * mass;
  const confidence = probes.interval.probability;
  const at: Record<Input, number> = { mass, duration, drain: 0, probes: probes.value };
  const caughtBy: readonly ErrorSource<Input>[] = [
    limited('condensate.mass', limit, { mass: 1 }),
    limited('condensate.time', usualCatch.stopwatch, { duration: 1 }),
    limited('condensate.drain', usualCatch.drain, { drain: 1 }),
  ];
  const rate = (inputs: Readonly<Record<Input, number>>) => (inputs.mass / inputs.duration) * (1 + inputs.drain);
  const caught = budget(rate, at, caughtBy, { confidence });
  const difference = budget(
    (inputs) => rate(inputs) - inputs.probes,
    at,
    [
      ...caughtBy,
      {
        name: 'condensate.probes',
        u: probes.u,
        shape: 'normal',
        degreesOfFreedom: probes.degreesOfFreedom,
        moves: { probes: 1 },
      },
    ],
    { confidence },
  );
  const { low, high } = difference.interval;
  return {
    caught,
    difference,
    outcome: high < 0 ? 'less' : low > 0 ? 'more' : 'agrees',
    latent: caught.value * (vaporEnthalpy + heatVapor * entering.dryBulb),
  };
}
