import { moistAir } from '~/calc/moistAir.ts';
import { siOf } from '~/job/entered.ts';
import { quantityOf } from '~/job/quantities.ts';
import { addReading } from '~/job/readings.ts';
import type { QuantityKey } from '~/job/types.ts';
import { Caution } from '~/parts/Caution.tsx';
import { Echo } from '~/parts/Echo.tsx';
import { echoes } from '~/words/en/echoes.ts';
import { sheet } from '~/words/en/sheet.ts';
import { returnAir, supplyAir } from '~/words/en/steps.ts';
import { readOf, typing } from '../../fields.ts';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { percent, temperature, temperatureStep } from '../../show.ts';
import { assessment, edit, job } from '../../store.ts';
import type { Side } from '../Readings.tsx';
import { Remarks } from '../Remarks.tsx';
import { StepFrame } from '../StepFrame.tsx';

const Readings = lazy<{ side: Side }>(() => import('../Readings.tsx').then((module) => module.Readings));

/** Steps 1 and 2: what a probe shows before and after the coil. */
export function AirStep({ side }: { side: Side }) {
  const wetBulb = job.value.chosen.humidityAs === 'wetBulb';
  const humidity: QuantityKey = `${side}.${wetBulb ? 'wetBulb' : 'relativeHumidity'}`;
  const switchKind = () => edit({ slot: 'chosen', key: 'humidityAs', to: wetBulb ? 'relativeHumidity' : 'wetBulb' });
  return (
    <StepFrame
      step={side}
      tools={
        <>
          {side === 'entering' && (
            <button type="button" class="plain-button" onClick={switchKind}>
              {wetBulb ? returnAir.humidityInstead : returnAir.wetBulbInstead}
            </button>
          )}
          <ReadingKeys side={side} />
        </>
      }
    >
      {side === 'leaving' && <Caution of="drilling-and-duct-materials">{supplyAir.caution}</Caution>}
      <div class="field-row">
        <QuantityField of={`${side}.dryBulb`} />
        <QuantityField of={humidity} />
      </div>
      <Understood side={side} />
      <Remarks about={side} />
      {job.value.tables[`${side}.readings`] && <Readings side={side} />}
    </StepFrame>
  );
}

/** The other face of the humidity, the difference to the return, and what was typed before a switch of instrument. */
function Understood({ side }: { side: Side }) {
  const said = [humiditySaid(side), ...(side === 'leaving' ? [difference(), usualHumidity()] : [])].filter(Boolean);
  return <Echo>{typing.value?.startsWith(side) ? '' : said.join(' ')}</Echo>;
}

function humiditySaid(side: Side): string | false {
  const state = assessment.value[side];
  const wetBulb = job.value.chosen.humidityAs === 'wetBulb';
  if (state.ok)
    return wetBulb
      ? echoes.isHumidity(percent(state.value.relativeHumidity))
      : echoes.isWetBulb(temperature(state.value.wetBulb));
  return beforeSwitch(side, wetBulb);
}

/** What the humidity typed before the switch of instrument comes to in the measure asked for now. It is not typed in for anyone. */
function beforeSwitch(side: Side, wetBulb: boolean): string | false {
  const dryBulb = siOf(readOf(`${side}.dryBulb`));
  const before = siOf(readOf(`${side}.${wetBulb ? 'relativeHumidity' : 'wetBulb'}`));
  if (dryBulb === null || before === null) return false;
  const { pressure } = assessment.value;
  try {
    const air = moistAir({ dryBulb, pressure, ...(wetBulb ? { relativeHumidity: before } : { wetBulb: before }) });
    return returnAir.before(
      wetBulb ? echoes.isWetBulb(temperature(air.wetBulb)) : echoes.isHumidity(percent(air.relativeHumidity)),
    );
  } catch {
    return false;
  }
}

function difference(): string | false {
  const { entering, leaving } = assessment.value;
  if (!entering.ok || !leaving.ok) return false;
  const drop = entering.value.dryBulb - leaving.value.dryBulb;
  return drop >= 0 ? echoes.cooler(temperatureStep(drop)) : echoes.warmer(temperatureStep(-drop));
}

/** That the humidity is what a wet coil leaves behind it; anything else is a remark. */
function usualHumidity(): string | false {
  const { leaving } = assessment.value;
  const [low, high] = quantityOf('leaving.relativeHumidity').usual;
  if (!leaving.ok || leaving.value.relativeHumidity < low || leaving.value.relativeHumidity > high) return false;
  return echoes.usualWet(percent(leaving.value.relativeHumidity));
}

/** The key that moves what is typed into the list, and leaves the fields free for the next reading. */
function ReadingKeys({ side }: { side: Side }) {
  return (
    <button type="button" class="plain-button" onClick={() => edit(...addReading(job.value, side))}>
      {sheet.anotherReading}
    </button>
  );
}
