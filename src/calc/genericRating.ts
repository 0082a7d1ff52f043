import { leavingAir, ratedApparatus } from './coilModel.ts';
import { standardAirDensity, standardPressureAtSeaLevel } from './constants.ts';
import { type CurveSet, coolingCurves, flowFactorOf, temperatureFactor } from './coolingCurves.ts';
import { dryOutOn } from './dryOut.ts';
import { CalcError, within } from './errors.ts';
import { genericBand } from './genericBand.ts';
import { limits } from './limits.ts';
import { moistAir } from './moistAir.ts';
import { ratingPoint } from './ratingPoint.ts';
import { ratingTable } from './ratingTable.ts';
import { checkCapacity } from './tableCheck.ts';
import type { Basis, GenericStage, GenericUnit, RatingRow, RatingTable } from './types.ts';
import { cubicFootPerMinute, fromFahrenheit, tonOfRefrigeration } from './units.ts';

export interface GenericRating {
  /** The certified capacity of the stage at the rating point, W, on `basis`. */
  readonly total: number;
  readonly basis: Basis;
  /** Blower power inside the rating, W. */
  readonly blowerPower: number;
  readonly unit: GenericUnit;
  readonly stage: GenericStage;
  /** Of the rating, kg/s. Left out: what the published machines had for their capacity. */
  readonly dryAirFlow?: number | undefined;
  /** Gross, at the rating point. Left out: the published defaults for this airflow. */
  readonly sensibleHeatRatio?: number;
  /** Of compressor and outdoor fan at the rating point, W. Left out: the table has no power. */
  readonly power?: number;
}

/**
 * Where the table stands: outdoors as far as eight sets were compared. The curves are for wet coils, down to 57 °F at most; at
 * 80 °F the coil turns dry near 61 °F, and from there down the total is level.
 */
const outdoors = steps(75, 115, 5);
const wetBulbs = steps(50, 72, 1);
/** Ratios of air mass flow that the curves are taken for. */
const flowRatios = Array.from({ length: 13 }, (_, i) => 0.7 + 0.05 * i);

/**
 * Gross sensible heat ratio at the rating point by airflow per ton. Two open defaults stand side by side: 0.7374 at 394.2
 * cfm a ton (0.73 net with 0.25 W/cfm inside), and a regression with 0.7144 there that rises by 0.000532 for each cfm.
 * The middle is taken, and half of what lies between them stands in the band. See `sensibleDefault` in the bibliography.
 */
const sensibleDefault = { share: 0.7259, at: 394.2, slope: 0.000532, band: 0.016 } as const;

function steps(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => fromFahrenheit(from + i * step));
}

/**
 * A rating table from one certified capacity and published curves, normalised to 1 at the rating point: an estimate, with
 * its band at every point. One-stage machines and each stage of two-stage ones. All of it is for air of 80 °F: sensible from
 * apparatus dew point and bypass factor, and below the wet bulb at which the coil turns dry the total stays what it is there
 * (EnergyPlus, DX coil). Power is without the indoor blower's.
 *
 * Throws a `CalcError`: `variableSpeed`, for which there are no such curves; `missing` for a unit or a stage that is none;
 * `notPositive`, `notFinite`, `outOfRange`; `noSurface` where no coil has this sensible share at this airflow.
 */
export function genericRating(rating: GenericRating): RatingTable {
  const { total, basis, blowerPower, unit, stage } = rating;
  if (stage === 'variable') throw new CalcError('variableSpeed', 'generic.stage', 0, 1, 2);
  const curves = coolingCurves[`${unit} ${stage}`] as CurveSet | undefined;
  if (!curves) throw new CalcError('missing', 'generic.stage', 0, 1, 2);
  checkCapacity('certified', total);
  within('blowerPower', blowerPower, limits.blowerPower);
  const inside = basis === 'net' ? blowerPower : 0;
  const gross = total + inside;
  const dryAirFlow = rating.dryAirFlow ?? usualFlow(gross, curves);
  within('dryAirFlow', dryAirFlow, limits.dryAirFlow);
  const factor = normalised(curves.capacity);
  const input = normalised(curves.inputRatio);
  const coil = coilOf(gross, dryAirFlow, rating.sensibleHeatRatio);
  const band = genericBand(curves.capacity);
  const rows: RatingRow[] = outdoors.flatMap((outdoorDryBulb) => {
    const turning = coil.turnsDry((wetBulb) => gross * factor(wetBulb, outdoorDryBulb));
    return wetBulbs.map((enteringWetBulb) => {
      // Below the wet bulb at which the coil turns dry its total stays what it is there.
      const wetBulb = Math.max(enteringWetBulb, turning);
      const share = factor(wetBulb, outdoorDryBulb);
      return {
        outdoorDryBulb,
        enteringWetBulb,
        enteringDryBulb: ratingPoint.enteringDryBulb,
        dryAirFlow,
        total: gross * share - inside,
        sensible: (wetBulb > enteringWetBulb ? gross * share : coil.sensible(wetBulb, gross * share)) - inside,
        power: rating.power === undefined ? null : rating.power * share * input(wetBulb, outdoorDryBulb),
        band: band(enteringWetBulb, outdoorDryBulb),
      };
    });
  });
  const atRating = flowFactorOf(curves.flow, 1);
  const airflow = flowRatios.map((ratio) => ({
    dryAirFlow: ratio * dryAirFlow,
    total: ((gross * flowFactorOf(curves.flow, ratio)) / atRating - inside) / total,
    sensible: null,
  }));
  return ratingTable(rows, {
    basis,
    blowerPower,
    from: 'generic',
    sensibleBand: rating.sensibleHeatRatio === undefined ? sensibleDefault.band / sensibleDefault.share : 0,
    multipliers: { airflow, indoorMatch: null, lineLength: null },
  });
}

/** A published curve over its value at the rating point. */
function normalised(curve: CurveSet['capacity']): (enteringWetBulb: number, outdoorDryBulb: number) => number {
  const atRating = temperatureFactor(curve, ratingPoint.enteringWetBulb, ratingPoint.outdoorDryBulb);
  return (enteringWetBulb, outdoorDryBulb) => temperatureFactor(curve, enteringWetBulb, outdoorDryBulb) / atRating;
}

/** Dry-air flow, kg/s, of the published machines for a capacity in W. */
function usualFlow(gross: number, { cubicFeetPerTon }: CurveSet): number {
  return (gross / tonOfRefrigeration) * cubicFeetPerTon * cubicFootPerMinute * standardAirDensity;
}

/** The coil that the rating point describes, at 80 °F: its sensible capacity, W, by wet bulb and total, and where it turns dry. */
function coilOf(gross: number, dryAirFlow: number, share: number | undefined) {
  const flow = dryAirFlow / standardAirDensity / cubicFootPerMinute / (gross / tonOfRefrigeration);
  const ratio = share ?? sensibleDefault.share + sensibleDefault.slope * (flow - sensibleDefault.at);
  within('sensibleHeatRatio', ratio, [0, 1]);
  const entering = (wetBulb: number) =>
    moistAir({ dryBulb: ratingPoint.enteringDryBulb, wetBulb, pressure: standardPressureAtSeaLevel });
  const duty = { entering: entering(ratingPoint.enteringWetBulb), dryAirFlow, total: gross };
  const found = ratedApparatus(duty, ratio * gross);
  if (!found) throw new CalcError('noSurface', 'sensibleHeatRatio', ratio, 0, 1);
  const { bypassFactor } = found;
  const dryBulb = ratingPoint.enteringDryBulb;
  return {
    sensible: (enteringWetBulb: number, total: number): number =>
      leavingAir({ entering: entering(enteringWetBulb), dryAirFlow, total }, bypassFactor)?.sensible ?? total,
    turnsDry: (totalAt: (wetBulb: number) => number): number =>
      dryOutOn(
        totalAt,
        { dryBulb, dryAirFlow, bypassFactor, pressure: standardPressureAtSeaLevel },
        wetBulbs[0] as number,
      ) ?? -Infinity,
  };
}
