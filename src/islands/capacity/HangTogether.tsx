import type { Check } from '~/calc/types.ts';
import { UsualRange } from '~/charts/UsualRange.tsx';
import type { UnitKey } from '~/job/types.ts';
import { checkNames, results } from '~/words/en/results.ts';
import { inUnitOf } from '../show.ts';
import { assessment, system } from '../store.ts';

/** In which unit each of the figures is read, and with how many decimals. */
const shown: Readonly<
  Record<Check['code'], { readonly ip: UnitKey; readonly si: UnitKey; readonly decimals: number }>
> = {
  airflowPerCapacity: { ip: 'cfmPerTon', si: 'lsPerKw', decimals: 0 },
  temperatureDrop: { ip: 'degFStep', si: 'degCStep', decimals: 1 },
  supplyHumidity: { ip: 'percent', si: 'percent', decimals: 0 },
  condensate: { ip: 'lbPerHour', si: 'kgPerHour', decimals: 1 },
  apparatusDewPoint: { ip: 'degF', si: 'degC', decimals: 1 },
  bypassFactor: { ip: 'percent', si: 'percent', decimals: 0 },
};

/** Six figures that should agree with one another, each beside its usual range. */
export function HangTogether() {
  const known = assessment.value.checks.filter(({ value }) => value !== null);
  return (
    <section>
      <h2>{results.hangTogether}</h2>
      <p class="label quiet">{results.hangTogetherLead}</p>
      <ul class="hang-together">
        {known.map((check) => (
          <Line key={check.code} check={check} />
        ))}
      </ul>
    </section>
  );
}

function Line({ check }: { check: Check }) {
  const { decimals, ...units } = shown[check.code];
  const unit = units[system.value];
  const value = inUnitOf(check.value ?? 0, unit, decimals);
  const rounds = system.value === 'ip';
  const [low, high] = check.usual.map((limit) => inUnitOf(limit, unit, rounds ? 0 : decimals));
  const usual = (check.value ?? 0) >= check.usual[0] && (check.value ?? 0) <= check.usual[1];
  return (
    <li>
      <span class="hang-name">{checkNames[check.code]}</span>
      <b class="hang-value">
        {value.number}
        <small>{value.unit}</small>
      </b>
      <small class="hang-usual">
        {!usual && <b>{results.outsideUsual}, </b>}
        {check.code === 'condensate' && `${results.roughly}, `}
        {results.usual(low?.number ?? '', high?.number ?? '')}
      </small>
      <UsualRange value={check.value ?? 0} usual={check.usual} />
    </li>
  );
}
