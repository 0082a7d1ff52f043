/** The line set that a job describes, and what it still needs. */
import { ratedLineLength } from '../calc/lineSetLimits.ts';
import type { LineSetInput } from '../calc/lineSetTypes.ts';
import { chosen } from './choices.ts';
import { entered, readEntered } from './entered.ts';
import type { QuantityKey } from './quantities.ts';
import type { Job } from './types.ts';
import { toSi } from './units.ts';

export type LineNeed = 'refrigerant' | 'nominalCapacity' | 'lineSet.vaporTube' | 'lineSet.length';

export interface LinesOfJob {
  /** `null` while nothing can be said: neither the maker's factor nor all of `needs` is there. */
  readonly input: LineSetInput | null;
  readonly needs: readonly LineNeed[];
  /** The first figure that was typed and cannot be read: no line is worked out around it. */
  readonly bad: QuantityKey | null;
}

/** What the two ends of the lines are taken to be until somebody reads them, SI. Common practice, no source. */
const usualLines = {
  'lineSet.evaporating': toSi(45, 'degF'),
  'lineSet.superheat': toSi(10, 'degFStep'),
  'lineSet.liquidTemperature': toSi(100, 'degF'),
  'lineSet.subcooling': toSi(10, 'degFStep'),
  'lineSet.ratedLength': ratedLineLength,
  'lineSet.fittings': 0,
  'lineSet.lift': 0,
} as const satisfies Partial<Record<QuantityKey, number>>;

const lineQuantities = [
  'nominalCapacity',
  'lineSet.length',
  'lineSet.makerFactor',
  'lineSet.maximumLength',
  'lineSet.maximumLift',
  ...(Object.keys(usualLines) as (keyof typeof usualLines)[]),
] as const satisfies readonly QuantityKey[];

/** Ducted mini-splits mostly have their metering device outdoors; every other split system beside its coil. */
export function meteringOf(job: Job): 'indoors' | 'outdoors' {
  const said = chosen(job, 'lineSet.meteringAt');
  if (said === 'indoors' || said === 'outdoors') return said;
  return chosen(job, 'equipment.kind') === 'ductedMiniSplit' ? 'outdoors' : 'indoors';
}

export function linesOf(job: Job): LinesOfJob {
  const bad = lineQuantities.find((key) => readEntered(job, key).state === 'bad') ?? null;
  const refrigerant = chosen(job, 'refrigerant');
  const capacity = entered(job, 'nominalCapacity');
  const vaporTube = chosen(job, 'lineSet.vaporTube');
  const length = entered(job, 'lineSet.length');
  const or = (key: keyof typeof usualLines) => entered(job, key) ?? usualLines[key];
  const maker = {
    factor: entered(job, 'lineSet.makerFactor'),
    maximumLength: entered(job, 'lineSet.maximumLength'),
    maximumLift: entered(job, 'lineSet.maximumLift'),
  };
  const there = { refrigerant, nominalCapacity: capacity, 'lineSet.vaporTube': vaporTube, 'lineSet.length': length };
  const needs = (Object.keys(there) as LineNeed[]).filter((key) => (there[key] ?? null) === null);
  const run =
    refrigerant === undefined || capacity === null || vaporTube === undefined || length === null
      ? null
      : {
          refrigerant,
          capacity,
          evaporating: or('lineSet.evaporating'),
          superheat: or('lineSet.superheat'),
          liquidTemperature: or('lineSet.liquidTemperature'),
          subcooling: or('lineSet.subcooling'),
          vaporTube,
          ratedVaporTube: chosen(job, 'lineSet.ratedVaporTube') ?? vaporTube,
          liquidTube: chosen(job, 'lineSet.liquidTube') ?? usualLiquidTube,
          length,
          ratedLength: or('lineSet.ratedLength'),
          fittings: or('lineSet.fittings'),
          lift: or('lineSet.lift'),
        };
  const equipment = chosen(job, 'equipment.kind') === 'packaged' ? 'packaged' : 'split';
  const input: LineSetInput = { equipment, metering: meteringOf(job), maker, run };
  const nothing = bad !== null || (run === null && maker.factor === null);
  return { input: nothing ? null : input, needs, bad };
}

/** Common practice, no source. */
export const usualLiquidTube = '3/8';
