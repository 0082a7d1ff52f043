import { airflowWays } from '~/calc/airflow/ways.ts';
import type { Airflow } from '~/calc/dryAirFlow.ts';
import { attempt } from '~/calc/outcome.ts';
import { airHere } from '~/job/airflow/air.ts';
import { Echo } from '~/parts/Echo.tsx';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { airflowAnswer as words } from '~/words/en/airflowAnswer.ts';
import { job } from '../jobStore.ts';
import { ofKind } from '../show.ts';
import { percentFine } from './flowText.ts';

/** The same air as standard air, and as it moves at the return and at the supply, with what mistaking the one for the other does. */
export function Ways({ airflow }: { airflow: Airflow }) {
  const entering = airHere(job.value, 'entering');
  const leaving = airHere(job.value, 'leaving');
  const ways = attempt(() => airflowWays(airflow, { entering: entering.air, leaving: leaving.air }));
  if (!ways.ok) return null;
  return (
    <section>
      <h2>{words.ways}</h2>
      <p class="label quiet">{words.waysLead}</p>
      <ScrollRegion label={words.ways}>
        <table class="ledger">
          <caption class="spoken">{words.ways}</caption>
          <thead>
            <tr>
              <td />
              <th scope="col" class="number" colSpan={2}>
                {words.sameAir}
              </th>
              <th scope="col" class="number">
                {words.takenFor}
              </th>
            </tr>
          </thead>
          <tbody>
            {ways.value.map(({ name, volumeFlow, mistaken }) => {
              const { number, unit } = ofKind('volumeFlow', volumeFlow);
              return (
                <tr key={name}>
                  <th scope="row">{words.wayNames[name]}</th>
                  <td class="number">{number}</td>
                  <td class="unit">{unit}</td>
                  <td class="number">
                    {Math.abs(mistaken) < 5e-4 ? words.asGiven : `${mistaken > 0 ? '+' : ''}${percentFine(mistaken)}`}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollRegion>
      {(entering.assumed || leaving.assumed) && <Echo>{words.airAssumed}</Echo>}
    </section>
  );
}
