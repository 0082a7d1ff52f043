import { standardVolumeFlow } from './dryAirFlow.ts';
import type { Check, CoilLoad, MoistAir, Test } from './types.ts';
import { cubicFootPerMinute, fahrenheitDegree, fromFahrenheit, poundPerHour, tonOfRefrigeration } from './units.ts';

type Range = readonly [number, number];

const scaled = ([low, high]: Range, by: number): Range => [low * by, high * by];

/** Water of a 3-ton system in dry to damp weather, 2 to 9 lb/h; other sizes in proportion. */
const water = scaled([2, 9], poundPerHour);
const waterTons = 3;

interface Known {
  readonly test: Test;
  readonly entering: MoistAir | null;
  readonly leaving: MoistAir | null;
  readonly dryAirFlow: number | null;
  readonly load: CoilLoad | null;
}

/**
 * Six figures that should agree with one another, each with the range that is usual; `null` where it is not known. All ranges
 * are common practice, no source. The airflow is m³/s of standard air per ton of nominal capacity; the water is kg/s, and its
 * range goes with the nominal capacity (3 tons where that is not known).
 */
export function hangTogether({ test, entering, leaving, dryAirFlow, load }: Known): readonly Check[] {
  const nominal = test.nominalCapacity ?? 0;
  const tons = nominal > 0 && Number.isFinite(nominal) ? nominal / tonOfRefrigeration : null;
  const perTon = standardVolumeFlow(dryAirFlow ?? Number.NaN) / (tons ?? Number.NaN);
  const drop = entering && leaving ? entering.dryBulb - leaving.dryBulb : null;
  const source = 'commonPractice';
  return [
    {
      code: 'airflowPerCapacity',
      kind: 'volumeFlow',
      value: Number.isFinite(perTon) ? perTon : null,
      usual: scaled([350, 450], cubicFootPerMinute),
      source,
    },
    {
      code: 'temperatureDrop',
      kind: 'temperatureDifference',
      value: drop,
      usual: scaled([16, 22], fahrenheitDegree),
      source,
    },
    { code: 'supplyHumidity', kind: 'fraction', value: leaving?.relativeHumidity ?? null, usual: [0.85, 0.98], source },
    {
      code: 'condensate',
      kind: 'massFlow',
      value: load?.condensate ?? null,
      usual: scaled(water, (tons ?? waterTons) / waterTons),
      source,
    },
    {
      code: 'apparatusDewPoint',
      kind: 'temperature',
      value: load?.apparatus?.dewPoint ?? null,
      usual: [fromFahrenheit(45), fromFahrenheit(54)],
      source,
    },
    {
      code: 'bypassFactor',
      kind: 'fraction',
      value: load?.apparatus?.bypassFactor ?? null,
      usual: [0.05, 0.2],
      source,
    },
  ];
}
