import type { CombinedAirflow } from '~/calc/airflow/combine.ts';
import type { AirflowFound } from '~/calc/airflow/found.ts';
import { type AtAirflow, airflowFactors, atOtherAirflows, atOtherAirflowsByCoil } from '~/calc/airflow/moreOrLess.ts';
import { resultsOf } from '~/calc/assess.ts';
import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { attempt, orNull } from '~/calc/outcome.ts';
import { corrected } from '~/calc/sideBySide.ts';
import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { Outcome, Test } from '~/calc/types.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { moreOrLess as words } from '~/words/en/airflowContext.ts';
import { capacity, percent } from '../show.ts';
import { interpreted } from '../store.ts';
import { flowText, standardText } from './flowText.ts';
import { counts } from './model.ts';

/** What more air, or less, would do to the capacity and to its sensible share at the conditions of the job. */
export function MoreOrLess() {
  const airflow = counts.value?.ok ? counts.value.value : null;
  if (!airflow) return null;
  const others = othersOf(airflow);
  return (
    <section>
      <h2>{words.head}</h2>
      {others ? (
        <>
          <p class="label quiet">{others.by === 'rating' ? words.byRating : words.byCoil}</p>
          <ScrollRegion label={words.head}>
            <table class="ledger airflow-others">
              <caption class="spoken">{words.head}</caption>
              <thead>
                <tr>
                  <th scope="col">{words.airflow}</th>
                  <th scope="col" class="number">
                    {words.total} <small>{capacity(0).unit}</small>
                  </th>
                  <th scope="col" class="number">
                    {words.sensible} <small>{capacity(0).unit}</small>
                  </th>
                  <th scope="col" class="number">
                    {words.ratio}
                  </th>
                </tr>
              </thead>
              <tbody>
                {others.rows.map(({ factor, dryAirFlow, total, share }) => (
                  <tr key={factor}>
                    <th scope="row">
                      {standardText(dryAirFlow)} <small>{words.share(percent(factor))}</small>
                    </th>
                    {total === null ? (
                      <td class="number" colSpan={3}>
                        {words.outside}
                      </td>
                    ) : (
                      <>
                        <td class="number">{capacity(total).number}</td>
                        <td class="number">{share === null ? '–' : capacity(share * total).number}</td>
                        <td class="number">{share === null ? '–' : percent(share)}</td>
                      </>
                    )}
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollRegion>
          <p class="answer-note">
            {others.band !== null && `${words.band(percent(others.band))} `}
            {others.sharesByCoil && `${words.shares} `}
            {words.note} <cite>{sourceLabels[others.source]}</cite>
          </p>
        </>
      ) : (
        <p>{words.needs(flowText(airflow))}</p>
      )}
    </section>
  );
}

/**
 * From the rating of the job where it has one that can be read, else from the coil as it was measured; `null` with neither. A
 * rating without sensible figures takes its shares from that coil.
 */
function othersOf(airflow: AirflowFound | CombinedAirflow) {
  const { dryAirFlow, sources } = airflow;
  const found = { volumeFlow: standardVolumeFlow(dryAirFlow), limit: null, sources };
  const test: Test = { ...interpreted.value.test, airflow: { ...found, place: 'entering', kind: 'standard' } };
  const results = resultsOf(corrected(test));
  const byRating = ratingRows(results, dryAirFlow);
  const byCoil = coilRows(results, dryAirFlow);
  const first = (byRating ?? byCoil ?? []).find((at) => at !== null);
  if (!first) return null;
  const rows = airflowFactors.map((factor, index) => {
    const own = byRating ? (byRating[index] ?? null) : null;
    const coil = byCoil?.[index] ?? null;
    const at = byRating ? own : coil;
    return {
      factor,
      dryAirFlow: factor * dryAirFlow,
      total: at?.total ?? null,
      share: at && (at.sensibleHeatRatio ?? coil?.sensibleHeatRatio ?? null),
    };
  });
  const bands = (byRating ?? []).flatMap((at) => (at?.band && at.band >= leastBand ? [at.band] : []));
  return {
    by: byRating ? ('rating' as const) : ('coil' as const),
    sharesByCoil: byRating?.every((at) => at?.sensible == null) ?? false,
    rows,
    band: bands.length > 0 ? Math.max(...bands) : null,
    source: first.source,
  };
}

/** A band that would round to nothing is not spoken of. */
const leastBand = 0.005;

type Results = ReturnType<typeof resultsOf>;
type Rows = readonly (AtAirflow | null)[];

/** `null` where nothing can be read at any of the airflows. */
function anyOf(outcomes: readonly Outcome<AtAirflow>[]): Rows | null {
  const rows = outcomes.map(orNull);
  return rows.some((row) => row !== null) ? rows : null;
}

function ratingRows({ rating }: Results, dryAirFlow: number): Rows | null {
  if (!rating.ok) return null;
  const { table, conditions, installation } = rating.value;
  return anyOf(atOtherAirflows(table, { ...conditions, dryAirFlow }, installation));
}

/** The coil's own capacity is gross: the blower's heat is put back where the probes have taken it off. */
function coilRows({ entering, load, blower }: Results, dryAirFlow: number): Rows | null {
  const apparatus = load.ok ? load.value.apparatus : null;
  if (!load.ok || !entering.ok || !apparatus) return null;
  const { total, basis } = load.value;
  const gross = basis === 'net' ? total + (orNull(blower) ?? 0) : total;
  const duty = { entering: entering.value, dryAirFlow, total: gross };
  return orNull(attempt(() => anyOf(atOtherAirflowsByCoil(duty, apparatus.bypassFactor))));
}
