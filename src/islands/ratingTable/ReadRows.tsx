import type { RatingRow } from '~/calc/types.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { tableInUse } from '~/words/en/ratingTable.ts';
import { temperature } from '../show.ts';
import { airflowText, figureText } from './shown.ts';

/** More figures than this are the whole table: the conditions are not known yet. */
export const mostRead = 40;

/** Figures of the maker’s table that a job reads, each at its place. */
export function ReadRows({ rows }: { rows: readonly RatingRow[] }) {
  const { heads } = tableInUse;
  const has = (key: 'enteringDryBulb' | 'dryAirFlow' | 'sensible') =>
    rows.some((row) => row[key] !== undefined && row[key] !== null);
  const figure = (watts: number | null | undefined) =>
    watts === null || watts === undefined ? '–' : figureText(watts);
  return (
    <ScrollRegion label={tableInUse.reads}>
      <table class="ledger">
        <caption>{tableInUse.reads}</caption>
        <thead>
          <tr>
            <th scope="col">{heads.outdoorDryBulb}</th>
            <th scope="col">{heads.enteringWetBulb}</th>
            {has('enteringDryBulb') && <th scope="col">{heads.enteringDryBulb}</th>}
            {has('dryAirFlow') && <th scope="col">{heads.airflow}</th>}
            <th scope="col" class="number">
              {heads.total}
            </th>
            {has('sensible') && (
              <th scope="col" class="number">
                {heads.sensible}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            // The order of the rows is that of the table: they have no other name.
            <tr key={index}>
              <td>{temperature(row.outdoorDryBulb)}</td>
              <td>{temperature(row.enteringWetBulb)}</td>
              {has('enteringDryBulb') && (
                <td>{row.enteringDryBulb === undefined ? '' : temperature(row.enteringDryBulb)}</td>
              )}
              {has('dryAirFlow') && <td>{row.dryAirFlow === undefined ? '' : airflowText(row.dryAirFlow)}</td>}
              <td class="number">{figure(row.total)}</td>
              {has('sensible') && <td class="number">{figure(row.sensible)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
}
