import { standardPressure } from './atmosphere.ts';
import { standardVolumeFlow } from './dryAirFlow.ts';
import type { Facts, Rule } from './facts.ts';
import { limits } from './limits.ts';
import { given } from './readings.ts';
import { amount } from './trace.ts';
import type { Amount } from './types.ts';
import { cubicFootPerMinute, tonOfRefrigeration } from './units.ts';

/** Airflow of a machine at work, m³/s of standard air per ton: 250 to 500 cfm. Common practice, no source. */
const perTon = [250 * cubicFootPerMinute, 500 * cubicFootPerMinute] as const;
/** Weather moves the pressure by less than this; a bigger gap is a pressure corrected to sea level. Our choice. */
const pressureGap = 0.03;

/** Half the difference that an answer would settle, as a share of the middle. */
function price({ flow }: Facts): Amount | null {
  if (!flow || flow.low === flow.high) return null;
  return amount('Δ', 'fraction', (flow.high - flow.low) / 2 / flow.dryAirFlow);
}

/** Whether the two questions about the airflow are open; the place does not matter for standard air. */
function openQuestions({ test: { airflow } }: Facts): { readonly place: boolean; readonly kind: boolean } {
  const kind = airflow.kind !== 'actual' && airflow.kind !== 'standard';
  const place = airflow.kind !== 'standard' && airflow.place !== 'entering' && airflow.place !== 'leaving';
  return { place, kind };
}

/** A rule for one way in which the questions can be open. What knowing is worth is its one amount. */
function unsureRule(code: string, place: boolean, kind: boolean): Rule {
  return {
    code,
    weight: 'note',
    about: 'airflow',
    amounts: (facts) => {
      const open = openQuestions(facts);
      const worth = price(facts);
      return worth && open.place === place && open.kind === kind ? [worth] : null;
    },
  };
}

/** What the airflow and the pressure say. */
export const airflowRules: readonly Rule[] = [
  unsureRule('airflowPlaceUnsure', true, false),
  unsureRule('airflowKindUnsure', false, true),
  unsureRule('airflowPlaceAndKindUnsure', true, true),
  {
    // A slip of the pen, the wrong unit, or a very unusual system.
    code: 'airflowPerTon',
    weight: 'doubt',
    about: 'airflow',
    amounts: ({ flow, test: { nominalCapacity } }) => {
      if (!flow || !given(nominalCapacity) || !(nominalCapacity > 0)) return null;
      const each = (standardVolumeFlow(flow.dryAirFlow) * tonOfRefrigeration) / nominalCapacity;
      if (!Number.isFinite(each) || (each >= perTon[0] && each <= perTon[1])) return null;
      return [
        amount('V̇', 'volumeFlow', each),
        amount('V̇ₗ', 'volumeFlow', perTon[0]),
        amount('V̇ₕ', 'volumeFlow', perTon[1]),
      ];
    },
  },
  {
    // The forecast's pressure is corrected to sea level; the one wanted is that of the place.
    code: 'seaLevelPressure',
    weight: 'doubt',
    about: 'airflow',
    amounts: ({ test: { barometer, altitude } }) => {
      if (!given(barometer) || !given(altitude)) return null;
      const inRange =
        altitude >= limits.altitude[0] &&
        altitude <= limits.altitude[1] &&
        barometer >= limits.pressure[0] &&
        barometer <= limits.pressure[1];
      if (!inRange) return null;
      const standard = standardPressure(altitude);
      if (Math.abs(barometer / standard - 1) <= pressureGap) return null;
      return [amount('p', 'pressure', barometer), amount('pₛ', 'pressure', standard)];
    },
  },
];
