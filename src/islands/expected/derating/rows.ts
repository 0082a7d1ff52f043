/** The lines of the ledger: names, figures and changes of the steps in the system of the page. */
import { standardPressureAtSeaLevel } from '~/calc/constants.ts';
import type { Derate, DerateCause } from '~/calc/types.ts';
import type { LedgerRow } from '~/charts/derating/ledger.ts';
import { format, formatNumber, unitLabel, withUnit } from '~/job/format.ts';
import { quantityOf, unitOf } from '~/job/quantities.ts';
import { displayUnit, toSi } from '~/job/units.ts';
import { derating, seaLevel, stepNames } from '~/words/en/derating.ts';
import { changeNumber, fine } from '../../fine.ts';
import { system } from '../../jobStore.ts';
import { temperature } from '../../show.ts';
import { air, hasTried as isTriedAt, place } from '../model.ts';
import { flowText } from '../said.ts';
import { derates, hasTried, heightOf, inputs, nominal, out } from './model.ts';

export const share = (fraction: number): string => `${formatNumber(fraction * 100, 1)}\u00a0%`;
export const unitName = (): string => unitLabel(displayUnit.power[system.value]);

/** What a step is named with. */
function partOf(cause: DerateCause): string {
  if (cause === 'certified') return ratingPoint();
  if (cause === 'temperatures') return placeOf();
  if (cause === 'airflow') return air.value.dryAirFlow === undefined ? '' : flowText(air.value.dryAirFlow);
  return cause === 'altitude' ? heightText(inputs.value?.pressure ?? standardPressureAtSeaLevel) : '';
}

const short = (si: number) => temperature(si).replace('.0\u00a0', '\u00a0');
/** 95 °F and 67 °F: the point of a certified cooling rating. */
const ratingPoint = () => `${short(toSi(95, 'degF'))} and ${short(toSi(67, 'degF'))}`;
const placeOf = () => {
  const at = place.value;
  return at ? `${short(at.outdoorDryBulb)} outdoors, ${short(at.enteringWetBulb)} wet bulb` : '';
};

function heightText(pressure: number): string {
  if (pressure === standardPressureAtSeaLevel) return seaLevel;
  const unit = unitOf('altitude', system.value);
  return withUnit(format(heightOf(pressure), unit, quantityOf('altitude').decimals[system.value]), unit);
}

export const nameOf = (cause: DerateCause): string => stepNames[cause](partOf(cause));

/** Why a step has no dimension line; `null` where it has one. */
export function restOf({ cause, applies, before, after }: Derate): string | null {
  if (out.value.has(cause)) return derating.leftOut;
  if (Math.abs(after / before - 1) >= 5e-5) return null;
  return applies ? derating.noChange : derating.doesNotApply;
}

export function rowsOf(): readonly LedgerRow[] {
  const steps = derates.value;
  const [first] = steps;
  if (!first) return [];
  const start =
    nominal.value === null
      ? inputs.value?.certified === null
        ? derating.tableStart
        : derating.certifiedStart
      : derating.nameplate;
  const head: LedgerRow = {
    name: start,
    amount: fine(first.before).number,
    value: first.before,
    change: null,
    note: null,
    tried: false,
  };
  return [
    head,
    ...steps.map((step, i): LedgerRow => {
      const rest = restOf(step);
      return {
        name: `${i + 1}\u2002${nameOf(step.cause)}`,
        amount: fine(step.after).number,
        value: step.after,
        change: rest === null ? changeNumber(step.after - step.before) : null,
        note: rest,
        tried: isTriedIn(step.cause),
        isSum: i === steps.length - 1,
      };
    }),
  ];
}

/** Whether something was tried in a step, or it was left out. */
export function isTriedIn(cause: DerateCause): boolean {
  if (out.value.has(cause)) return true;
  if (cause === 'temperatures') return isTriedAt('outdoorDryBulb', 'enteringWetBulb');
  if (cause === 'airflow') return isTriedAt('dryAirFlow');
  return cause === 'altitude' ? hasTried('pressure') : hasTried(cause);
}
