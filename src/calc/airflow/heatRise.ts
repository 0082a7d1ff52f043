import { defaultBlower } from '../blowerHeat.ts';
import { heatDryAir, heatVapor, standardAirDensity } from '../constants.ts';
import { CalcError, within } from '../errors.ts';
import { limits } from '../limits.ts';
import type { Trace } from '../types.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, ofLimit } from './found.ts';
import { type HeatSource, heatCauses, heatOf } from './heat.ts';
import { riseRemarks, traceRise, wetting } from './heatRiseSaid.ts';
import { airflowLimits } from './limits.ts';

/** Where the supply temperature was read: a mean of several shielded points, one shielded point, or in sight of what is hot. */
export type ProbePlace = 'several' | 'one' | 'inSight';

export interface TemperatureRise {
  readonly heat: HeatSource;
  /** The blower between the probes: its power, W; `assumed`: not measured; `outside`: not between them. */
  readonly blower: { readonly power: number } | 'assumed' | 'outside';
  readonly enteringDryBulb: number;
  readonly leavingDryBulb: number;
  /** kg/kg dry air; heating does not change it. */
  readonly humidityRatio: number;
  readonly probes: ProbePlace;
  /** Half-width of each probe's error, K. */
  readonly probeLimit: number;
  readonly speed: BlowerSpeed;
}

export interface TemperatureRiseFound extends AirflowFound {
  /** W, the blower's own included. */
  readonly heat: number;
  /** K. */
  readonly rise: number;
  /** What one kelvin more or less in the rise would do to the airflow, a fraction. */
  readonly perKelvin: number;
  /** Always true: the air was measured over a dry coil. */
  readonly dryCoil: true;
}

/**
 * Standard uncertainties of the place of the supply probe. In the plenum of a furnace the answer can be wrong by more than a
 * factor of two (`furnacePosition`); the figures are ours.
 */
const position = {
  electric: { several: 0.03, one: 0.08, inSight: 0.25 },
  fuel: { several: 0.08, one: 0.2, inSight: 0.4 },
} as const satisfies Record<string, Record<ProbePlace, number>>;
/** Blowers draw half to one and a half times the default: half-width of its share. Common practice, no source. */
const blowerSpread = 0.5;
/** W per kg/s of dry air where nobody measured the blower. */
const assumedBlower = defaultBlower.power / (defaultBlower.volumeFlow * standardAirDensity);

/**
 * Airflow from a known heat and the rise of temperature that it makes, as standard air, m³/s: ṁ = Q/(c·Δt), no density needed.
 * For the cooling airflow the blower must run on the cooling speed, and the coil is dry all the same: the answer says so.
 * Throws a `CalcError` for a rise that is too small (`temperatureRise`), and for any figure out of range.
 */
export function airflowFromTemperatureRise(test: TemperatureRise, t?: Trace): TemperatureRiseFound {
  within('enteringDryBulb', test.enteringDryBulb, limits.dryBulb);
  within('leavingDryBulb', test.leavingDryBulb, limits.dryBulb);
  within('humidityRatio', test.humidityRatio, limits.humidityRatio);
  within('probeLimit', test.probeLimit, airflowLimits.probeLimit);
  const rise = test.leavingDryBulb - test.enteringDryBulb;
  within('temperatureRise', rise, airflowLimits.temperatureRise);
  const source = heatOf(test.heat, t);
  const specificHeat = heatDryAir + heatVapor * test.humidityRatio;
  const own = ownHeat(test.blower, specificHeat * rise);
  const flow = (source + own.fixed) / (specificHeat * rise - own.perFlow);
  const blower = own.fixed + own.perFlow * flow;
  traceRise(test, { source, blower, rise, flow }, t);
  const causes: readonly Cause[] = [
    ...heatCauses(test.heat).map((cause) => ({ ...cause, moves: source / (source + blower) })),
    {
      name: 'heat.blower',
      u: ofLimit(test.blower === 'assumed' ? blowerSpread : 0),
      moves: blower / (source + blower),
      basis: 'blowerDefault',
      shape: 'rectangular',
    },
    { name: 'probe.entering', u: ofLimit(test.probeLimit) / rise, basis: 'commonPractice', shape: 'rectangular' },
    {
      name: 'probe.leaving',
      u: ofLimit(test.probeLimit) / rise,
      moves: -1,
      basis: 'commonPractice',
      shape: 'rectangular',
    },
    positionCause(test),
    { name: 'temperatureRise.dryCoil', u: ofLimit(wetting), basis: 'commonPractice', shape: 'rectangular' },
  ];
  const finding = { method: 'temperatureRise', volumeFlow: flow / standardAirDensity, at: 'standard' } as const;
  const answer = found({ ...finding, causes, remarks: riseRemarks(test, rise), speed: test.speed }, t);
  return { ...answer, heat: source + blower, rise, perKelvin: 1 / rise, dryCoil: true };
}

/** The blower's heat: so many W, or so many W for each kg/s, which the air's own heat must exceed. */
function ownHeat(blower: TemperatureRise['blower'], perFlow: number): { fixed: number; perFlow: number } {
  if (blower === 'outside') return { fixed: 0, perFlow: 0 };
  if (blower === 'assumed') {
    if (perFlow <= 2 * assumedBlower) {
      const least = (2 * assumedBlower) / heatDryAir;
      throw new CalcError(
        'outOfRange',
        'temperatureRise',
        perFlow / heatDryAir,
        least,
        airflowLimits.temperatureRise[1],
      );
    }
    return { fixed: 0, perFlow: assumedBlower };
  }
  within('blower.power', blower.power, limits.blowerPower);
  return { fixed: blower.power, perFlow: 0 };
}

function positionCause({ heat, probes }: TemperatureRise): Cause {
  const kind = heat.kind === 'fuel' ? 'fuel' : 'electric';
  const basis = kind === 'fuel' ? 'furnacePosition' : 'commonPractice';
  return { name: 'temperatureRise.position', u: position[kind][probes], basis };
}
