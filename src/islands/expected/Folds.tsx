import { fieldOf } from '~/charts/surface/reading.ts';
import { figureText } from '~/charts/surface/scale.ts';
import { tableFold } from '~/words/en/expected.ts';
import { temperature } from '../show.ts';
import { air, quantity, scale, table } from './model.ts';
import { airText, nameOf } from './said.ts';

/** The surface in figures: what the picture shows, for who does not see it, and on paper. */
export function SurfaceTable() {
  const of = table.value;
  if (!of) return null;
  const { outdoorDryBulb, enteringWetBulb } = of.axes;
  const field = fieldOf(of, quantity.value, air.value);
  const text = (dry: number, wet: number) => {
    const si = field({ outdoorDryBulb: dry, enteringWetBulb: wet });
    return Number.isNaN(si) ? tableFold.hole : figureText(scale.value, si);
  };
  return (
    <details class="fold">
      <summary>{tableFold.fold}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls on its own has to be reached by keyboard. */}
      <section class="air-table" aria-label={tableFold.fold} tabIndex={0}>
        <table class="ledger">
          <caption>{tableFold.caption(nameOf(quantity.value), scale.value.unit, airText(air.value))}</caption>
          <thead>
            <tr>
              <th scope="col">{tableFold.corner}</th>
              {outdoorDryBulb.map((dry) => (
                <th scope="col" class="number" key={dry}>
                  {temperature(dry)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {enteringWetBulb.map((wet) => (
              <tr key={wet}>
                <th scope="row">{temperature(wet)}</th>
                {outdoorDryBulb.map((dry) => (
                  <td class="number" key={dry}>
                    {text(dry, wet)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
