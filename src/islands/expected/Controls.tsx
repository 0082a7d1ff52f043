import { surfaceQuantities } from '~/charts/surface/reading.ts';
import { Choices } from '~/parts/Choices.tsx';
import { and, missing, missingWords, surfaceNames, tryWords } from '~/words/en/expected.ts';
import { offered, quantity, wanted } from './model.ts';
import { Slider } from './Sliders.tsx';
import { showsSlices } from './view.ts';

/** Which figure is looked at; those that the table does not have say why. */
export function Quantity() {
  const without = surfaceQuantities.filter((one) => !offered.value.includes(one));
  const lacking = [...new Set(without.map((one) => missingWords[one] ?? ''))].filter(Boolean);
  const { ask, ...options } = surfaceNames;
  return (
    <div class="expected-quantity">
      <Choices
        id="expected-quantity"
        ask={ask}
        options={options}
        value={quantity.value}
        without={without}
        onChoose={(value) => {
          wanted.value = surfaceQuantities.find((one) => one === value) ?? 'total';
          return true;
        }}
      />
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
