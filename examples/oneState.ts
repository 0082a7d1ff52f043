/**
 * One state of moist air, from dry bulb (°F), relative humidity (%) and height above the sea (ft):
 *
 *     node examples/oneState.ts 75 50 5280
 */
import {
  CalcError,
  cubicFootPerPound,
  foot,
  fromFahrenheit,
  grain,
  moistAir,
  pound,
  standardPressure,
  toFahrenheit,
} from '../src/calc/index.ts';

const [dryBulb = 75, relativeHumidity = 50, height = 0] = process.argv.slice(2).map(Number);
try {
  const air = moistAir({
    dryBulb: fromFahrenheit(dryBulb),
    relativeHumidity: relativeHumidity / 100,
    pressure: standardPressure(height * foot),
  });
  console.log(`wet bulb        ${toFahrenheit(air.wetBulb).toFixed(2)} °F`);
  console.log(`dew point       ${toFahrenheit(air.dewPoint).toFixed(2)} °F`);
  // A mass in a mass: per kilogram of dry air is per pound of it.
  console.log(`water           ${((air.humidityRatio * pound) / grain).toFixed(2)} gr/lb of dry air`);
  console.log(`specific volume ${(air.specificVolume / cubicFootPerPound).toFixed(3)} ft³/lb of dry air`);
} catch (error) {
  // Whatever cannot be is refused with the quantity and its limits; no answer is ever NaN.
  if (!(error instanceof CalcError)) throw error;
  console.error(`${error.quantity} is ${error.value}; it may be ${error.min} to ${error.max} (${error.code})`);
  process.exitCode = 1;
}
