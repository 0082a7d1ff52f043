import { chosen } from '~/job/choices.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { job } from '../../jobStore.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

/** A known heat and the rise that it makes. */
export function TemperatureRise() {
  const heat = chosen(job.value, 'rise.heat');
  const caution = heat === 'fuel' ? words.temperatureRise.gasCaution : words.temperatureRise.liveCaution;
  return (
    <>
      <Where
        of="temperatureRise"
        cautions={[caution]}
        assumed={
          <>
            {(heat === 'single' || heat === 'three') && <QuantityField of="rise.powerFactor" />}
            <ChoiceField of="rise.blowerBetween" />
            {chosen(job.value, 'rise.blowerBetween') === 'yes' && <QuantityField of="rise.blowerPower" />}
          </>
        }
      />
      <ChoiceSelect of="rise.heat" />
      {heat === 'fuel' ? <Fuel /> : heat === 'power' ? <QuantityField of="rise.power" /> : <Electric />}
      <div class="field-row">
        <QuantityField of="rise.entering" />
        <QuantityField of="rise.leaving" />
      </div>
      <div class="field-row">
        <ChoiceSelect of="rise.probes" />
        <ChoiceSelect of="rise.speed" />
      </div>
      <MethodResult method="temperatureRise" />
    </>
  );
}

function Electric() {
  return (
    <div class="field-row">
      <QuantityField of="rise.voltage" />
      <QuantityField of="rise.current" />
    </div>
  );
}

function Fuel() {
  return (
    <>
      <div class="field-row">
        <QuantityField of="rise.gasVolume" />
        <QuantityField of="rise.gasTime" />
      </div>
      <div class="field-row">
        <QuantityField of="rise.heatingValue" />
        <QuantityField of="rise.efficiency" />
      </div>
      <ChoiceField of="rise.efficiencyFrom" />
    </>
  );
}
