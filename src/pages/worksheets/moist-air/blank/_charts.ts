/** The charts that are drawn to be printed: two systems, three heights. */
import { standardPressure } from '~/calc/index.ts';
import { format, withUnit } from '~/job/format.ts';
import type { System } from '~/job/types.ts';
import { blank } from '~/words/en/moistAirBlank.ts';

const systems = ['ip', 'si'] as const satisfies readonly System[];
const heights = [0, 1600, 2500] as const;

export const charts = systems.flatMap((system) =>
  heights.map((height) => {
    const pressure = standardPressure(height);
    const unit = system === 'ip' ? 'inHg' : 'kpa';
    return {
      slug: `${system === 'ip' ? 'fahrenheit' : 'celsius'}-${height === 0 ? 'sea-level' : `${height}-m`}`,
      system,
      pressure,
      units: blank.systems[system],
      place: blank.heights[height],
      pressureText: withUnit(format(pressure, unit, system === 'ip' ? 2 : 1), unit),
    };
  }),
);
