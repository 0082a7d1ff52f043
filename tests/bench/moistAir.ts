/**
 * Moist air against psychrolib, on the same varying inputs: `npm run bench`. psychrolib works with the ideal-gas equations
 * and finds the wet bulb to 0.001 K by bisection; ours carries the enhancement factor and goes to 1e-6 K.
 */
import psychrolib from 'psychrolib';
import { moistAir, wetBulb } from '../../src/calc/index.ts';
import { contest, print, sink } from './harness.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

interface Input {
  readonly dryBulb: number;
  readonly relativeHumidity: number;
  readonly humidityRatio: number;
  readonly pressure: number;
}

/** 5 to 45 °C, 10 to 95 %, 70 to 101 kPa, spread evenly without a pattern (golden-ratio steps). */
const inputs: Input[] = Array.from({ length: 997 }, (_, i) => {
  const dryBulb = 5 + 40 * ((i * 0.618034) % 1);
  const relativeHumidity = 0.1 + 0.85 * ((i * 0.754878) % 1);
  const pressure = 70e3 + 31.325e3 * ((i * 0.56984) % 1);
  const humidityRatio = psychrolib.GetHumRatioFromRelHum(dryBulb, relativeHumidity, pressure);
  return { dryBulb, relativeHumidity, humidityRatio, pressure };
});

print([
  contest({
    title: 'whole state from dry bulb and relative humidity',
    inputs,
    ours: ({ dryBulb, relativeHumidity, pressure }) => {
      const air = moistAir({ dryBulb, relativeHumidity, pressure });
      return (
        air.dryBulb +
        air.wetBulb +
        air.dewPoint +
        air.relativeHumidity +
        air.humidityRatio +
        air.enthalpy +
        air.specificVolume +
        air.density +
        air.pressure +
        air.vaporPressure
      );
    },
    theirs: ({ dryBulb, relativeHumidity, pressure }) => {
      const air = psychrolib.CalcPsychrometricsFromRelHum(dryBulb, relativeHumidity, pressure);
      let sum = 0;
      for (let i = 0; i < air.length; i++) sum += air[i] as number;
      return sum;
    },
  }),
  contest({
    title: 'wet bulb from humidity ratio',
    inputs,
    ours: ({ dryBulb, humidityRatio, pressure }) => wetBulb(dryBulb, humidityRatio, pressure),
    theirs: ({ dryBulb, humidityRatio, pressure }) =>
      psychrolib.GetTWetBulbFromHumRatio(dryBulb, humidityRatio, pressure),
  }),
]);
if (!Number.isFinite(sink)) throw new Error('a contestant gave something that is no number');
