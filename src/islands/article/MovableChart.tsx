import { useEffect } from 'preact/hooks';
import type { Job } from '~/job/types.ts';
import { chartInPlace } from '~/words/en/chartInPlace.ts';
import { show } from '../jobStore.ts';
import { Chart } from '../moistAir/Chart.tsx';
import { fetchOwn, ownProcess } from '../moistAir/own.ts';
import { view } from '../moistAir/view.ts';
import { followUnits } from '../opening.ts';
import { QuantityField } from '../QuantityField.tsx';
import { capacityText } from '../show.ts';

/** The air chart with an example on it that is nobody's job: it is moved, read, and forgotten with the page. */
export function MovableChart({ example }: { example: Job }) {
  useEffect(() => {
    view.value = 'process';
    show(example, 'visitor');
    // Without the network the process may not come; the points are there all the same.
    void fetchOwn().catch(() => {});
    return followUnits();
  }, [example]);
  return (
    <figure class="picture">
      <Chart />
      <figcaption>{chartInPlace.caption}</figcaption>
      <fieldset class="chart-fields field-row">
        <legend>{chartInPlace.returnAir}</legend>
        <QuantityField of="entering.dryBulb" />
        <QuantityField of="entering.relativeHumidity" />
      </fieldset>
      <fieldset class="chart-fields field-row">
        <legend>{chartInPlace.supplyAir}</legend>
        <QuantityField of="leaving.dryBulb" />
        <QuantityField of="leaving.relativeHumidity" />
      </fieldset>
      <Said />
    </figure>
  );
}

/** What the coil takes out of the air, as a sentence that follows the points. */
function Said() {
  const load = ownProcess.value?.load;
  if (!load) return <p>{chartInPlace.none}</p>;
  return (
    <p>{chartInPlace.delivers(capacityText(load.total), capacityText(load.sensible), capacityText(load.latent))}</p>
  );
}
