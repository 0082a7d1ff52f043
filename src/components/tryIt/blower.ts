import { coilLoad, cubicFootPerMinute, dryAirFlow, fromFahrenheit, moistAir, temperatureRise } from '~/calc/index.ts';
import { ahead, dial } from './ahead.ts';

const entering = moistAir({ dryBulb: fromFahrenheit(75), relativeHumidity: 0.5 });
const behindCoil = moistAir({ dryBulb: fromFahrenheit(56), relativeHumidity: 0.88 });
const flow = dryAirFlow({ volumeFlow: 1200 * cubicFootPerMinute, at: entering });
/** The return air and the air right behind the coil, °C. */
export const around = { entering: entering.dryBulb, behindCoil: behindCoil.dryBulb } as const;

/**
 * What two probes around a coil show, W, with a blower of so many watts behind it: gross with the supply probe between the two,
 * net with it behind the blower. And by how many kelvin the blower warms the air.
 */
export function withBlower(power: number): readonly [gross: number, net: number, rise: number] {
  const rise = temperatureRise(power, flow, behindCoil.humidityRatio);
  const behindBlower = moistAir({ dryBulb: behindCoil.dryBulb + rise, humidityRatio: behindCoil.humidityRatio });
  const shown = (leaving: typeof entering) => coilLoad({ entering, leaving, dryAirFlow: flow }).total;
  return [shown(behindCoil), shown(behindBlower), rise];
}

export const blower = ahead([dial(100, 1000, 25, 425)], withBlower);
