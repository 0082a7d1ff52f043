import { chosen } from '~/job/choices.ts';
import { entered } from '~/job/entered.ts';
import { Caution } from '~/parts/Caution.tsx';
import { airflowMethods } from '~/words/en/airflowMethods.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { amountOf } from '../../fields.ts';
import { job } from '../../jobStore.ts';
import { Part } from '../../Part.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { isRoomy } from '../model.ts';
import { Where } from '../Where.tsx';

const words = airflowMethods.temperatureRise;

/** A known heat and the rise that it makes. */
export function TemperatureRise() {
  const heat = chosen(job.value, 'rise.heat') ?? 'single';
  const caution = heat === 'fuel' ? words.gasCaution : words.liveCaution;
  const part = { group: 'rise', roomy: isRoomy.value };
  return (
    <>
      <Where
        of="temperatureRise"
        assumed={
          <>
            {(heat === 'single' || heat === 'three') && <QuantityField of="rise.powerFactor" />}
            <ChoiceField of="rise.blowerBetween" />
            {chosen(job.value, 'rise.blowerBetween') === 'yes' && <QuantityField of="rise.blowerPower" />}
          </>
        }
      />
      <Part {...part} name={words.heat} said={choiceWords['rise.heat'].options[heat]} first>
        <Caution of={caution.of}>{caution.say}</Caution>
        <div class="field-row">
          <ChoiceSelect of="rise.heat" />
          {heat === 'fuel' && <QuantityField of="rise.heatingValue" />}
        </div>
        {heat === 'fuel' ? <Fuel /> : heat === 'power' ? <QuantityField of="rise.power" /> : <Electric />}
      </Part>
      <Part {...part} name={words.rise} said={riseSaid()} first={false}>
        <div class="field-row">
          <QuantityField of="rise.entering" />
          <QuantityField of="rise.leaving" />
        </div>
        <div class="field-row">
          <ChoiceSelect of="rise.probes" />
          <ChoiceSelect of="rise.speed" />
        </div>
      </Part>
      <MethodResult method="temperatureRise" />
    </>
  );
}

function riseSaid(): string {
  const entering = entered(job.value, 'rise.entering');
  const leaving = entered(job.value, 'rise.leaving');
  if (entering === null || leaving === null) return '';
  return words.between(amountOf('rise.entering', entering), amountOf('rise.leaving', leaving));
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
        <QuantityField of="rise.efficiency" />
        <ChoiceSelect of="rise.efficiencyFrom" />
      </div>
    </>
  );
}
