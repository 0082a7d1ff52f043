import { apparatus } from '../apparatus.ts';
import { heatDryAir, heatVapor, standardAirDensity } from '../constants.ts';
import { enthalpyAt } from '../enthalpy.ts';
import type { RatingHere } from '../expectedHere.ts';
import { saturatedVapor, vaporPressureAt } from '../humidityRatio.ts';
import { saturatedRatio } from '../saturatedAir.ts';
import { measureOf } from '../sideBySide.ts';
import { volumeAt } from '../specificVolume.ts';
import { temperatureRise } from '../temperatureRise.ts';
import type { Test, TestInput } from '../types.ts';
import { wetBulbAt } from '../wetBulb.ts';
import { ratioFrom } from './airAt.ts';
import type { Work } from './effects.ts';
import { expectedKernel } from './expectedKernel.ts';

/** The raw inputs of a test, in the order of the work. */
export const testInputs = [
  'entering.dryBulb',
  'entering.humidity',
  'leaving.dryBulb',
  'leaving.humidity',
  'airflow',
  'pressure',
  'supplyMixing',
  'outdoorDryBulb',
  'rating',
  'blower.power',
  'rating.blowerPower',
] as const satisfies readonly TestInput[];

/** What the work gives, in its order. */
export const testResults = [
  'ratio',
  'total',
  'sensible',
  'latent',
  'sensibleHeatRatio',
  'condensate',
  'dryAirFlow',
  'temperatureDrop',
  'supplyHumidity',
  'apparatusDewPoint',
  'bypassFactor',
] as const;
/** Where the results begin that are not always asked for, among them the dearest of all: a shorter list is filled without. */
export const firstResults = 6;

/** What a test is worked out with, beside its own readings: Pa, and the power of this system's own blower, W. */
export interface WorkFacts {
  readonly pressure: number;
  readonly blower: number;
  readonly rating: RatingHere | null;
}

/** A test made ready to be worked out many times. */
export interface TestWork {
  readonly at: Float64Array;
  readonly work: Work;
}

/**
 * A whole test as one function of its raw inputs: net capacity here over the net capacity that its table gives at these
 * conditions, and what was measured. Entering state, airflow and pressure move both sides together. The air that leaves is the
 * reading moved along the line of the process by `supplyMixing`: a spot warmer than the mean is air of which more has missed
 * the coil. Results that cannot be had are not numbers; a leaving state above saturation leaves none.
 *
 * Without a rating there is no ratio.
 */
export function testWork(test: Test, { pressure, blower, rating }: WorkFacts): TestWork {
  const measures = [measureOf(test.entering), measureOf(test.leaving)] as const;
  const wetBulbRead = measures[0] === 'wetBulb';
  const humidityRead = measures[1] === 'relativeHumidity';
  const volumeFlow = test.airflow.volumeFlow as number;
  const places = flowPlaces(test);
  const expected = rating && expectedKernel(rating);
  const outside = test.blower.place === 'outside probes';
  const before = test.blower.place === 'before coil' ? 1 : 0;
  const after = test.blower.place === 'after coil' ? 1 : 0;
  const at = Float64Array.of(
    test.entering.dryBulb as number,
    humidityOf(test.entering),
    test.leaving.dryBulb as number,
    humidityOf(test.leaving),
    0,
    pressure,
    0,
    test.outdoorDryBulb ?? 0,
    0,
    blower,
    0,
  );
  const work: Work = (values, out) => {
    for (let i = 0; i < out.length; i++) out[i] = Number.NaN;
    const t1 = values[0] as number;
    const p = values[5] as number;
    const power = values[9] as number;
    const W1 = ratioFrom(measures[0], t1, values[1] as number, p);
    const read = values[2] as number;
    const readRatio = ratioFrom(measures[1], read, values[3] as number, p);
    const mixing = values[6] as number;
    const t2 = read + mixing;
    const W2 = mixing === 0 ? readRatio : readRatio + (mixing * (W1 - readRatio)) / (t1 - read);
    // A reading is air; a spot colder than it may be none.
    if (!(W1 >= 0 && W2 >= 0) || (mixing < 0 && saturatedRatio(t2, p) < W2)) return;
    const v1 = volumeAt(t1, W1, p);
    const flow = volumeFlow * (1 + (values[4] as number)) * densityAt(places, v1, volumeAt(t2, W2, p));
    const total = flow * (enthalpyAt(t1, W1) - enthalpyAt(t2, W2));
    const sensible = flow * (heatDryAir + heatVapor * W2) * (t1 - t2);
    if (expected) {
      const wet = wetBulbRead ? (values[1] as number) : wetBulbAt(t1, W1, p);
      const net = expected(values[7] as number, wet, t1, flow, power) + (values[10] as number);
      out[0] = (outside ? total - power : total) / (net * (1 + (values[8] as number)));
    }
    out[1] = total;
    out[2] = sensible;
    out[3] = total - sensible;
    out[4] = sensible / total;
    out[5] = flow * (W1 - W2);
    if (out.length <= firstResults) return;
    out[6] = flow;
    out[7] = t1 - t2;
    out[8] = humidityRead ? (values[3] as number) : vaporPressureAt(readRatio, p) / saturatedVapor(read, p);
    const coil = apparatus({
      enteringDryBulb: t1 + before * temperatureRise(power, flow, W1),
      enteringHumidityRatio: W1,
      leavingDryBulb: t2 - after * temperatureRise(power, flow, W2),
      leavingHumidityRatio: W2,
      pressure: p,
    });
    if (!coil) return;
    out[9] = coil.dewPoint;
    out[10] = coil.bypassFactor;
  };
  return { at, work };
}

/** Where the figure of the airflow may be a volume of the air as it moves, and whether it may be standard air. */
interface FlowPlaces {
  readonly standard: boolean;
  readonly entering: boolean;
  readonly leaving: boolean;
}

function flowPlaces({ airflow: { place, kind } }: Test): FlowPlaces {
  const actual = kind !== 'standard';
  return {
    standard: kind !== 'actual',
    entering: actual && place !== 'leaving',
    leaving: actual && place !== 'entering',
  };
}

/** Dry air in a cubic metre of the figure, kg: the middle of what the answers allow. */
function densityAt({ standard, entering, leaving }: FlowPlaces, v1: number, v2: number): number {
  let low = Infinity;
  let high = 0;
  if (standard) {
    low = standardAirDensity;
    high = standardAirDensity;
  }
  if (entering) {
    low = Math.min(low, 1 / v1);
    high = Math.max(high, 1 / v1);
  }
  if (leaving) {
    low = Math.min(low, 1 / v2);
    high = Math.max(high, 1 / v2);
  }
  return (low + high) / 2;
}

function humidityOf({ relativeHumidity, wetBulb }: Test['entering']): number {
  return (wetBulb ?? relativeHumidity) as number;
}
