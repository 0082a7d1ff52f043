import { enthalpyAt } from '../enthalpy.ts';
import type { SourceKey } from '../sources.ts';
import type { MoistAir } from '../types.ts';
import { fromFahrenheit } from '../units.ts';

/** An attic on a design afternoon: a vented one under dark shingles. The water in it is the example's that goes with the source. */
const designAttic = { dryBulb: fromFahrenheit(130), humidityRatio: 0.014, source: 'atticDesign' } as const;

/** Air that goes past a probe, and how much of it: shares of the air that is counted as the airflow. */
const leaks = { bypass: 0.1, cabinet: 0.02, returnLeak: 0.05 } as const;

/** What air gone astray makes of a reading: how much more (or less, below nothing) it shows than the coil really gives. */
export interface LeakPrice {
  readonly code: keyof typeof leaks;
  /** How much of the air. */
  readonly share: number;
  /** Shown over real, less one. */
  readonly reads: number;
  readonly source: SourceKey;
}

/**
 * Three leaks at the size that they often have, priced at the states that were read:
 * - bypass: supply air let back into the return behind the probe. The coil cools only what is new, 1 − x of the air counted.
 * - cabinet: attic air drawn in between coil and supply probe, on top of an airflow counted at the return: the leaving air of
 *   the coil is warmed by x/(1 + x) of it.
 * - return leak: attic air drawn in behind the return probe, part of the airflow counted: the coil enters warmer by x of it.
 */
export function leakPrices(
  entering: MoistAir,
  leaving: MoistAir,
  attic: { dryBulb: number; humidityRatio: number } = designAttic,
): readonly LeakPrice[] {
  const shown = entering.enthalpy - leaving.enthalpy;
  const hotter = enthalpyAt(attic.dryBulb, attic.humidityRatio) - entering.enthalpy;
  const { bypass, cabinet, returnLeak } = leaks;
  const price = (code: LeakPrice['code'], real: number, source: SourceKey): LeakPrice => {
    return { code, share: leaks[code], reads: shown / real - 1, source };
  };
  return [
    price('bypass', (1 - bypass) * shown, 'definition'),
    price('cabinet', (1 + cabinet) * shown + cabinet * hotter, designAttic.source),
    price('returnLeak', shown + returnLeak * hotter, designAttic.source),
  ];
}
