import { sourceLabels } from '~/calc/sourceLabels.ts';
import { Shares } from '~/charts/Shares.tsx';
import { Legend } from '~/parts/Legend.tsx';
import { margin } from '~/words/en/margin.ts';
import { sureFigures } from '~/words/en/sureFigures.ts';
import { inUnitOf, joined, percent, temperatureStep } from '../show.ts';
import { assessment, interpreted, system } from '../store.ts';
import { cellsSaid } from './cells.ts';
import { estimateBand } from './estimate.ts';
import { isDesk } from './model.ts';
import { largest } from './sure/causes.ts';

/** The margin of a desk's sheet: the numbers of the ledger, each with its source, and how to read the lines. */
export function Margin() {
  const { measured, expected, ratio, entering, leaving } = assessment.value;
  const readFrom = expected.ok && expected.value.derates.find(({ cause }) => cause === 'temperatures')?.source;
  const { probeLimits, altitude, barometer } = interpreted.value.test;
  return (
    <aside class="sheet-margin" aria-label={margin.title}>
      <ol class="notes">
        {measured.ok && entering.ok && leaving.ok && (
          <li>
            {margin.measured(
              joined(inUnitOf(measured.value.dryAirFlow, system.value === 'ip' ? 'lbPerHour' : 'kgPerHour', 0)),
              joined(
                inUnitOf(
                  entering.value.enthalpy - leaving.value.enthalpy,
                  system.value === 'ip' ? 'btuPerLbStep' : 'kjPerKg',
                  2,
                ),
              ),
            )}
            <cite>{sourceLabels.airEnthalpyMethod}</cite>
          </li>
        )}
        {expected.ok && (
          <li>
            {estimateBand.value === null ? margin.expected(cellsSaid.value) : margin.estimate(estimateBand.value)}
            <cite>{sourceLabels[readFrom || 'makersTable']}</cite>
          </li>
        )}
        {ratio.ok && <li>{margin.ratio}</li>}
      </ol>
      <p class="note">
        {altitude === null && barometer === null && `${margin.seaLevel} `}
        {margin.limits(temperatureStep(probeLimits.dryBulb), percent(probeLimits.relativeHumidity))}
      </p>
      {isDesk.value && <WhatMakesIt />}
      <Legend />
    </aside>
  );
}

/** The largest shares of the range, beside it. */
function WhatMakesIt() {
  const shares = largest(4);
  if (shares.length === 0) return null;
  const said = shares.map(({ name, share }) => `${name} ${percent(share)}`).join(', ');
  return (
    <section class="sheet-legend">
      <h3>{sureFigures.causes}</h3>
      <Shares shares={shares} width={240} summary={sureFigures.causesSummary(said)} />
      <p class="note">{sureFigures.causesLead}</p>
    </section>
  );
}
