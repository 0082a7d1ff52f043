import { unitLabel } from '~/job/format.ts';
import { readingWords } from '~/words/en/moistAir.ts';
import { tableWords } from '~/words/en/moistAirSteps.ts';
import { points, pressure } from '../points.ts';
import { pressureText, properties, propertyOf, unitOfProperty } from '../said.ts';
import { ProcessTable } from './ProcessTable.tsx';

const columns = properties.filter((property) => property !== 'vaporPressure');

/** The points in figures: what the picture shows, for who does not see it, and on paper. */
export function PointTable() {
  if (points.value.length === 0) return null;
  return (
    <details class="fold">
      <summary>{tableWords.fold}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls on its own has to be reached by keyboard. */}
      <section class="air-table" aria-label={tableWords.fold} tabIndex={0}>
        <table class="ledger">
          <caption>{tableWords.caption(pressureText(pressure.value))}</caption>
          <thead>
            <tr>
              <th scope="col">{tableWords.point}</th>
              {columns.map((property) => (
                <th scope="col" class="number" key={property}>
                  {readingWords.properties[property]}, {unitLabel(unitOfProperty(property))}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {points.value.map(({ key, code, name, air }) => (
              <tr key={key}>
                <th scope="row">
                  <b>{code}</b> {name}
                </th>
                {columns.map((property) => (
                  <td class="number" key={property}>
                    {propertyOf(air, property).number}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        <ProcessTable />
      </section>
    </details>
  );
}
