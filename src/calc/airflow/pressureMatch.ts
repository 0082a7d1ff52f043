import { within } from '../errors.ts';
import { limits } from '../limits.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, ofLimit, remark } from './found.ts';
import { type AirThere, flowShown, type Gauge, gaugeCause, manometer, type ShownAs } from './instruments.ts';
import { airflowLimits } from './limits.ts';

export interface PressureMatch {
  /** What the calibrated fan shows, m³/s. */
  readonly fanFlow: number;
  readonly shownAs: ShownAs;
  /** Supply static, Pa, their signs do not matter: what the system's own blower makes, and what the fan reached. */
  readonly pressureNormal: number;
  readonly pressureReached: number;
  /** The air that goes through the fan. */
  readonly air: AirThere;
  readonly gauge?: Gauge;
  readonly speed?: BlowerSpeed | undefined;
}

export interface PressureMatchFound extends AirflowFound {
  /** What the fan shows is multiplied by it: 1 where the pressure was met. */
  readonly extrapolated: number;
}

/** Standard uncertainties, common practice, no source: of a calibrated fan, and of the steadiness of a duct's pressure. */
const fan = 0.03;
const flutter = 0.02;
/** Flow goes with this power of the pressure, and how far ducts differ from it: half-width (`systemExponent`). */
const exponent = 0.5;
const exponentBand = 0.1;
/** A pressure this close was met. Our choice. */
const met = 0.03;
/** Less than this share of the pressure is far to go. Our choice. */
const far = 0.5;

/**
 * Airflow by a calibrated fan that takes the place of the return and brings the supply static to what the system's own blower
 * makes, m³/s. Where the fan is too weak V̇ = V̇ₘ·√(p/pₘ), with a band that widens with the distance. Throws a `CalcError` for a
 * pressure or flow out of range. `californiaAirflow`.
 */
export function airflowFromPressureMatch(match: PressureMatch, t?: Trace): PressureMatchFound {
  const { fanFlow, shownAs, air, gauge = manometer, speed } = match;
  const normal = Math.abs(match.pressureNormal);
  const reached = Math.abs(match.pressureReached);
  within('fanFlow', fanFlow, limits.volumeFlow);
  within('pressureNormal', normal, airflowLimits.planePressure);
  within('pressureReached', reached, airflowLimits.planePressure);
  const share = reached / normal;
  const extrapolated = share ** -exponent;
  const volumeFlow = fanFlow * extrapolated;
  t?.({
    id: 'airflow.pressureMatch.extrapolated',
    equation: 'V̇ = V̇ₘ·(p/pₘ)ⁿ',
    puts: [
      amount('V̇ₘ', 'volumeFlow', fanFlow),
      amount('p', 'airPressure', normal),
      amount('pₘ', 'airPressure', reached),
      amount('n', 'ratio', exponent),
    ],
    gives: amount('V̇', 'volumeFlow', volumeFlow),
    source: 'pressureMatching',
  });
  const causes: readonly Cause[] = [
    { name: 'pressureMatch.fan', u: fan, basis: 'commonPractice' },
    { name: 'pressureMatch.flutter', u: Math.SQRT1_2 * flutter, basis: 'commonPractice' },
    gaugeCause(gauge, 0.5),
    {
      name: 'pressureMatch.exponent',
      u: ofLimit(exponentBand * Math.abs(Math.log(share))),
      basis: 'systemExponent',
      shape: 'rectangular',
    },
  ];
  const missed = Math.abs(share - 1) > met;
  const amounts = [amount('s', 'fraction', share), amount('n', 'ratio', exponent)] as const;
  const remarks = [
    ...(missed && share < 1 && share >= far ? [remark('pressureNotReached', 'note', ...amounts)] : []),
    ...(share < far ? [remark('pressureFarFromReached', 'doubt', ...amounts)] : []),
    ...(missed && share > 1 ? [remark('pressureOvershot', 'note', ...amounts)] : []),
  ];
  const flow = flowShown(volumeFlow, shownAs, air, t);
  return { ...found({ method: 'pressureMatch', ...flow, causes, remarks, speed }, t), extrapolated };
}
