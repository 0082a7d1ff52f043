import { standardPressure } from './atmosphere.ts';
import { CalcError, within } from './errors.ts';
import { limits } from './limits.ts';
import { moistAir } from './moistAir.ts';
import { attempt, waitingFor } from './outcome.ts';
import { prefixed } from './trace.ts';
import type { AirReading, MoistAir, Outcome, Test, Trace } from './types.ts';

/** Station pressure of a test, Pa: the instrument on the spot, else the standard atmosphere at the height, else sea level. */
export function pressureOf({ barometer, altitude }: Pick<Test, 'barometer' | 'altitude'>, t?: Trace): Outcome<number> {
  return attempt(() => {
    if (given(barometer)) {
      within('barometer', barometer, limits.pressure);
      return barometer;
    }
    within('altitude', altitude ?? 0, limits.altitude);
    return standardPressure(altitude ?? 0, t);
  });
}

/** The state of the air at a probe. `side` names its fields: `entering.dryBulb`, `entering.humidity`. */
export function airOf(
  side: 'entering' | 'leaving',
  reading: AirReading,
  pressure: Outcome<number>,
  t?: Trace,
): Outcome<MoistAir> {
  const { dryBulb, relativeHumidity, wetBulb } = reading;
  const missing = [
    ...(given(dryBulb) ? [] : [`${side}.dryBulb`]),
    ...(given(relativeHumidity) || given(wetBulb) ? [] : [`${side}.humidity`]),
  ];
  if (!given(dryBulb) || missing.length > 0) return waitingFor(...missing);
  if (!pressure.ok) return pressure;
  return attempt(
    () => {
      if (given(relativeHumidity) && given(wetBulb)) throw new CalcError('oneHumidityNeeded', 'humidity', 2, 1, 1);
      const humidity = given(wetBulb) ? { wetBulb } : { relativeHumidity: relativeHumidity as number };
      return moistAir({ dryBulb, pressure: pressure.value, ...humidity }, prefixed(t, side));
    },
    (quantity) => `${side}.${quantity}`,
  );
}

/** Whether a value of a test has been given. */
export function given<T>(value: T | null | undefined): value is T {
  return value !== null && value !== undefined;
}
