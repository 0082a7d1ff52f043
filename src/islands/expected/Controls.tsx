import { type SurfaceQuantity, surfaceQuantities } from '~/charts/surface/reading.ts';
import { missingDryBulb, missingWords, surfaceNames, tryWords } from '~/words/en/expected.ts';
import { offered, quantity, table, wanted } from './model.ts';
import { Slider } from './Sliders.tsx';
import { nameOf } from './said.ts';
import { showsSlices } from './view.ts';

/** Which figure is looked at; those that the table does not have say why. */
export function Quantity() {
  const without = surfaceQuantities.filter((one) => !offered.value.includes(one));
  const lacking = [...new Set(without.map(whyMissing))].filter(Boolean);
  return (
    <div class="expected-quantity">
      <p id="expected-quantity">{surfaceNames.ask}</p>
      <div role="group" aria-labelledby="expected-quantity">
        {surfaceQuantities.map((one) => (
          <button
            key={one}
            type="button"
            class="air-toggle"
            aria-pressed={one === quantity.value ? 'true' : 'false'}
            disabled={without.includes(one)}
            onClick={() => {
              wanted.value = one;
            }}
          >
            {nameOf(one)}
          </button>
        ))}
      </div>
      {lacking.length > 0 && <p class="hint">{lacking.join(' ')}</p>}
    </div>
  );
}

/** Why this table has no figures of a quantity. */
function whyMissing(one: SurfaceQuantity): string {
  const unsaid = table.value?.sensible && table.value.axes.enteringDryBulb.length === 0;
  return unsaid && (one === 'sensible' || one === 'ratio') ? missingDryBulb : (missingWords[one] ?? '');
}

/** The place and the air, each with a slider; under the lines of a phone those of the place stand there already. */
export function Controls() {
  return (
    <section class="expected-try" aria-labelledby="expected-try">
      <h2 id="expected-try">
        {tryWords.title} <small>{tryWords.say}</small>
      </h2>
      <div class="expected-sliders">
        {!showsSlices.value && (
          <>
            <Slider axis="outdoorDryBulb" />
            <Slider axis="enteringWetBulb" />
          </>
        )}
        <Slider axis="dryAirFlow" />
        <Slider axis="enteringDryBulb" />
      </div>
    </section>
  );
}
