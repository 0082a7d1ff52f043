/** The air in which an airflow was measured: as the probes read it, or what is usual where they have not yet. */
import { moistAir } from '../../calc/moistAir.ts';
import { attempt, orNull } from '../../calc/outcome.ts';
import type { MoistAir } from '../../calc/types.ts';
import { fromFahrenheit } from '../../calc/units.ts';
import { sitePressure } from '../entered.ts';
import { meanReading, type Place } from '../readings.ts';
import type { Job } from '../types.ts';

export interface AirHere {
  readonly air: MoistAir;
  /** Nobody has read it yet: usual air at the pressure of the place stands in. */
  readonly assumed: boolean;
}

/** Return and supply air of an ordinary house with its cooling on. Common practice, no source. */
const usual = {
  entering: { dryBulb: fromFahrenheit(75), relativeHumidity: 0.5 },
  leaving: { dryBulb: fromFahrenheit(56), relativeHumidity: 0.9 },
} as const;

/** The air at a place. */
export function airHere(job: Job, place: Place): AirHere {
  const pressure = sitePressure(job);
  const read = readAir(job, place, pressure);
  return read ? { air: read, assumed: false } : { air: moistAir({ ...usual[place], pressure }), assumed: true };
}

function readAir(job: Job, place: Place, pressure: number): MoistAir | null {
  const { dryBulb, relativeHumidity, wetBulb } = meanReading(job, place);
  if (dryBulb === null) return null;
  if (wetBulb !== null) return orNull(attempt(() => moistAir({ dryBulb, wetBulb, pressure })));
  return relativeHumidity === null ? null : orNull(attempt(() => moistAir({ dryBulb, relativeHumidity, pressure })));
}
