/** The trade's three factors beside the exact result, for one invented reading at any height. */
import {
  btuPerHour,
  btuPerPound,
  coilLoad,
  cubicFootPerMinute,
  dryAirFlow,
  fahrenheitDegree,
  fromFahrenheit,
  grain,
  moistAir,
  pound,
  standardPressure,
} from '~/calc/index.ts';

/** Pounds of air an hour in a cubic foot a minute; Btu/h for a cfm and °F; Btu/h for a cfm and a grain a pound. */
const tradeFactors = { total: 4.5, sensible: 1.08, latent: 0.68 } as const;

export type Part = keyof typeof tradeFactors;
export const parts = Object.keys(tradeFactors) as Part[];

const cfm = 1200;
const returnAir = { dryBulb: fromFahrenheit(75), relativeHumidity: 0.5 };
const supplyAir = { dryBulb: fromFahrenheit(56), relativeHumidity: 0.88 };

export interface Compared {
  /** By the factor, with properties read from a chart for sea level, W. */
  readonly rule: number;
  /** From the air as it is there, W. */
  readonly exact: number;
}

/**
 * What 1,200 cfm of actual return air at 75 °F and 50 %, leaving at 56 °F and 88 %, comes to at a height in m, by the factors
 * and exactly, W. Throws what `standardPressure` does.
 */
export function compareAt(altitude: number): Readonly<Record<Part, Compared>> {
  const [sea, here] = [0, altitude].map((height) => {
    const pressure = standardPressure(height);
    return { entering: moistAir({ ...returnAir, pressure }), leaving: moistAir({ ...supplyAir, pressure }) };
  }) as [Air, Air];
  const exact = coilLoad({
    ...here,
    dryAirFlow: dryAirFlow({ volumeFlow: cfm * cubicFootPerMinute, at: here.entering }),
  });
  const differences = {
    total: (sea.entering.enthalpy - sea.leaving.enthalpy) / btuPerPound,
    sensible: (sea.entering.dryBulb - sea.leaving.dryBulb) / fahrenheitDegree,
    latent: (sea.entering.humidityRatio - sea.leaving.humidityRatio) / (grain / pound),
  };
  const compared = (part: Part): Compared => ({
    rule: tradeFactors[part] * cfm * differences[part] * btuPerHour,
    exact: exact[part],
  });
  return { total: compared('total'), sensible: compared('sensible'), latent: compared('latent') };
}

interface Air {
  readonly entering: ReturnType<typeof moistAir>;
  readonly leaving: ReturnType<typeof moistAir>;
}
