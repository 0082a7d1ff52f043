import { listedReadings, meanReading, measuredHere, removeReading } from '~/job/readings.ts';
import { Echo } from '~/parts/Echo.tsx';
import { echoes } from '~/words/en/echoes.ts';
import { returnAir } from '~/words/en/steps.ts';
import { NoteField } from '../NoteField.tsx';
import { clock, percent, temperature } from '../show.ts';
import { edit, job } from '../store.ts';

export type Side = 'entering' | 'leaving';

/** The readings kept so far, their mean, and which probe they came from. */
export function Readings({ side }: { side: Side }) {
  const listed = listedReadings(job.value, side);
  if (listed.length === 0) return null;
  const mean = meanReading(job.value, side);
  const here = measuredHere(job.value);
  const shown = (what: 'dryBulb' | 'relativeHumidity' | 'wetBulb', si: number) =>
    what === 'relativeHumidity' ? percent(si) : temperature(si);
  const now = here.some((what) => job.value.entered[`${side}.${what}`]?.text);
  return (
    <div>
      <table class="ledger">
        <caption>{returnAir.readings}</caption>
        <tbody>
          {listed.map(({ time, reads }, index) => (
            <tr key={index}>
              <th scope="row">{clock(time)}</th>
              {here.map((what) => {
                const read = reads[what];
                return (
                  <td class="number" key={what}>
                    {read.state === 'read' ? shown(what, read.si) : '–'}
                  </td>
                );
              })}
              <td class="ledger-source">
                <button
                  type="button"
                  class="plain-button"
                  aria-label={returnAir.remove(clock(time))}
                  onClick={() => edit(...removeReading(job.value, side, index))}
                >
                  {returnAir.removeShort}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <Echo>
        {echoes.mean(
          listed.length + (now ? 1 : 0),
          here.map((what) => (mean[what] === null ? '–' : shown(what, mean[what]))).join(', '),
        )}
      </Echo>
      <NoteField of={`${side}.probe`} name={returnAir.probe} />
    </div>
  );
}
