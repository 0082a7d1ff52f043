import { standardPressure } from '~/calc/atmosphere.ts';
import type { DerateCause } from '~/calc/types.ts';
import type { QuantityKey, System } from '~/job/types.ts';
import { toSi } from '~/job/units.ts';
import { stepSliders } from '~/words/en/deratingSteps.ts';
import { system } from '../../jobStore.ts';
import { SlideField } from '../../SlideField.tsx';
import { table } from '../model.ts';
import { Slider } from '../Sliders.tsx';
import { derates, heightOf, type Input, inputs, tryStep } from './model.ts';

/** What a step can be tried with. */
export function StepSliders({ cause }: { cause: DerateCause }) {
  if (cause === 'temperatures') {
    return (
      <>
        <Slider axis="outdoorDryBulb" at="step" />
        <Slider axis="enteringWetBulb" at="step" />
      </>
    );
  }
  if (cause === 'airflow') return <Slider axis="dryAirFlow" at="step" />;
  if (cause === 'altitude') return <Height />;
  return <Plain input={cause} />;
}

interface Row {
  readonly of: QuantityKey;
  readonly step: Readonly<Record<System, number>>;
  readonly range: (usual: number) => readonly [number, number];
}

const watts: Row = { of: 'blower.power', step: { ip: 10, si: 10 }, range: () => [0, 1200] };
const factor = (low: number, high: number, of: QuantityKey): Row => ({
  of,
  step: { ip: 0.005, si: 0.005 },
  range: () => [low, high],
});
const rows: Readonly<Record<Exclude<Input, 'pressure'>, Row>> = {
  certified: {
    of: 'rating.certified',
    step: { ip: 100, si: 0.05 },
    range: (usual) => [0.85 * usual, 1.1 * usual],
  },
  indoorMatch: factor(0.85, 1.1, 'rating.indoorMatch'),
  blowerInside: watts,
  lineSet: factor(0.85, 1, 'rating.lineLength'),
  blowerHere: watts,
};

function Plain({ input }: { input: Exclude<Input, 'pressure'> }) {
  const now = inputs.value;
  if (!now || (input === 'blowerInside' && table.value?.basis !== 'net')) return null;
  const { of, step, range } = rows[input];
  // Where nothing is given the step begins at what changes nothing.
  const value = now[input] ?? (input === 'certified' ? (derates.value[0]?.before ?? 0) : 1);
  return (
    <SlideField
      id={`step-${input}`}
      of={of}
      name={stepSliders[input]}
      value={value}
      range={range(input === 'certified' ? (derates.value[0]?.before ?? value) : value)}
      step={step[system.value]}
      onValue={(si) => tryStep({ [input]: si })}
    />
  );
}

const highest = { ip: toSi(8000, 'ft'), si: 2500 } as const;

function Height() {
  const now = inputs.value;
  if (!now) return null;
  return (
    <SlideField
      id="step-altitude"
      of="altitude"
      name={stepSliders.altitude}
      value={heightOf(now.pressure)}
      range={[0, highest[system.value]]}
      step={system.value === 'ip' ? 100 : 50}
      onValue={(si) => tryStep({ pressure: standardPressure(si) })}
    />
  );
}
