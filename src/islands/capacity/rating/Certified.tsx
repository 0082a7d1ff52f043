import { fromFahrenheit } from '~/calc/units.ts';
import { Echo } from '~/parts/Echo.tsx';
import { echoes } from '~/words/en/echoes.ts';
import { figureWords } from '~/words/en/figures.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { typing } from '../../fields.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { capacityText, temperature } from '../../show.ts';
import { assessment } from '../../store.ts';
import { estimateBand } from '../estimate.ts';

/** What published curves have to be told where only the certified capacity is known. All that comes of it is an estimate. */
export function Certified() {
  return (
    <>
      <p class="step-say">
        {figureWords.certifiedLead(temperature(fromFahrenheit(95)), temperature(fromFahrenheit(67)))}
      </p>
      <QuantityField of="rating.certifiedAirflow" />
      <ChoiceField of="equipment.stages" />
      <ChoiceField of="equipment.heatPump" />
      <Estimated />
    </>
  );
}

function Estimated() {
  if (typing.value !== null) return <Echo>{''}</Echo>;
  const { expected } = assessment.value;
  if (!expected.ok) return null;
  const band = estimateBand.value;
  const should = echoes.should(capacityText(expected.value.total));
  return <Echo>{band === null ? should : `${should} ${figureWords.estimate(band)}`}</Echo>;
}
