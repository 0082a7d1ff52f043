import { surfaceQuantities } from '~/charts/surface/reading.ts';
import { and, missing, missingWords, surfaceNames, tryWords } from '~/words/en/expected.ts';
import { offered, quantity, wanted } from './model.ts';
import { Slider } from './Sliders.tsx';
import { nameOf } from './said.ts';
import { showsSlices } from './view.ts';

/** Which figure is looked at; those that the table does not have say why. */
export function Quantity() {
  const without = surfaceQuantities.filter((one) => !offered.value.includes(one));
  const lacking = [...new Set(without.map((one) => missingWords[one] ?? ''))].filter(Boolean);
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
      {lacking.length > 0 && <p class="hint">{missing(lacking.join(and))}</p>}
    </div>
  );
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
