/** A question about how sure a share is. */
import { budget } from '../../../calc/confidence/budget.ts';
import type { ErrorSource } from '../../../calc/types.ts';
import { fahrenheitDegree } from '../../../calc/units.ts';
import { drawnReadings } from './drawn.ts';
import { loadOf, type Readings, tell, toldReadings, usualReadings } from './support.ts';
import type { Lesson } from './types.ts';

interface Test extends Readings {
  /** Per cent of what the system should make. */
  readonly share: number;
  /** ±, °F and per cent of relative humidity. */
  readonly temperatureLimit: number;
  readonly humidityLimit: number;
  /** ±, per cent of the airflow. */
  readonly airflowLimit: number;
}

type Input = keyof Readings;

const limited = (name: Input, half: number): ErrorSource<Input> => ({
  name,
  u: half / Math.sqrt(3),
  shape: 'rectangular',
  degreesOfFreedom: null,
  moves: { [name]: 1 } as Partial<Record<Input, number>>,
});

/** The share's relative standard uncertainty and the ends of its range, rounded outward to whole per cents as on every sheet. */
function rangeOf(test: Test) {
  const { room, roomHumidity, supply, supplyHumidity, airflow, share } = test;
  const capacity = (of: Readings) => loadOf({ ...of, supplyHumidity: Math.min(100, of.supplyHumidity) }).total;
  const { u, value, interval } = budget<Input>(capacity, { room, roomHumidity, supply, supplyHumidity, airflow }, [
    limited('room', test.temperatureLimit),
    limited('supply', test.temperatureLimit),
    limited('roomHumidity', test.humidityLimit),
    limited('supplyHumidity', test.humidityLimit),
    limited('airflow', (test.airflowLimit / 100) * airflow),
  ]);
  const end = (watts: number) => (share * watts) / value;
  return {
    uncertainty: u / value,
    low: Math.floor(end(interval.low)) / 100,
    high: Math.ceil(end(interval.high)) / 100,
  };
}

/** Where the line lies that most agree on. */
const line = 0.9;

/** How far down a range reaches that two ordinary probes and an airflow leave. */
export const twoProbes: Lesson<Test> = {
  first: { ...usualReadings, share: 88, temperatureLimit: 0.9, humidityLimit: 3, airflowLimit: 7 },
  draw: (draw) => {
    const readings = drawnReadings(draw);
    return (
      readings && {
        ...readings,
        share: draw.step(82, 97, 1),
        temperatureLimit: draw.step(0.5, 1.4, 0.1),
        humidityLimit: draw.step(2, 4, 0.5),
        airflowLimit: draw.step(4, 10, 1),
      }
    );
  },
  ask: (test) => {
    const share = test.share / 100;
    return {
      told: [
        ...toldReadings(test),
        tell('share', 'fraction', share),
        tell('temperatureLimit', 'temperatureDifference', test.temperatureLimit * fahrenheitDegree),
        tell('humidityLimit', 'fraction', test.humidityLimit / 100),
        tell('airflowLimit', 'fraction', test.airflowLimit / 100),
      ],
      grid: null,
      asTable: false,
      control: { by: 'barEnd', kind: 'fraction', range: [0.5, share], decimals: 0 },
      scale: {
        look: 'range',
        kind: 'fraction',
        pen: 'measured',
        ends: [0.5, 1.3],
        given: [
          { name: 'share', values: [share] },
          { name: 'agreedLine', values: [line] },
        ],
        top: share,
      },
    };
  },
  answer: (test) => {
    const { uncertainty, low, high } = rangeOf(test);
    return {
      answer: low,
      marks: [],
      top: high,
      told: [tell('uncertainty', 'fraction', uncertainty), tell('high', 'fraction', high)],
    };
  },
};
