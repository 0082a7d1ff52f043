/** A question about the heat of a blower. */
import { temperatureRise } from '../../../calc/temperatureRise.ts';
import type { Draw } from '../draw.ts';
import { drawnReadings } from './drawn.ts';
import { airOf, loadOf, type Readings, tell, toldReadings, usualReadings } from './support.ts';
import type { Lesson } from './types.ts';

interface BlowerTest extends Readings {
  /** Watts. */
  readonly blower: number;
}

const drawnBlower = (draw: Draw): BlowerTest | null => {
  const readings = drawnReadings(draw);
  return readings && { ...readings, blower: 10 * Math.round((readings.airflow * draw.step(0.25, 0.6, 0.01)) / 10) };
};

/** Which share of what the house gets the blower's own heat would have been. */
export const blower: Lesson<BlowerTest> = {
  first: { ...usualReadings, blower: 450 },
  draw: drawnBlower,
  ask: (of) => ({
    told: [...toldReadings(of), tell('blowerPower', 'power', of.blower)],
    grid: null,
    asTable: false,
    control: { by: 'barEnd', kind: 'fraction', range: [0, 0.25], decimals: 1 },
    scale: { look: 'bar', kind: 'fraction', pen: 'measured', ends: [0, 0.25], given: [], top: null },
  }),
  answer: (of) => {
    const { total, dryAirFlow: flow } = loadOf(of);
    const leaving = airOf(of.supply, of.supplyHumidity);
    return {
      answer: of.blower / total,
      marks: [],
      top: null,
      told: [
        tell('total', 'power', total),
        tell('blowerPower', 'power', of.blower),
        tell('warming', 'temperatureDifference', temperatureRise(of.blower, flow, leaving.humidityRatio)),
      ],
    };
  },
};
