import { Check } from '~/parts/Echo.tsx';
import { heightWords } from '~/words/en/moistAirSteps.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { pressureFits, pressures } from '../points.ts';
import { pressureText } from '../said.ts';

/** Height and barometer of the job. */
export function HeightBody() {
  return (
    <>
      <div class="field-row">
        <QuantityField of="altitude" signed />
        <QuantityField of="barometer" />
      </div>
      {!pressureFits.value && (
        <Check>{heightWords.stays(pressureText(pressures[1]), pressureText(pressures[0]))}</Check>
      )}
    </>
  );
}
