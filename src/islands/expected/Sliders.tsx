import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { tryWords } from '~/words/en/expected.ts';
import { system } from '../jobStore.ts';
import { SlideField } from '../SlideField.tsx';
import { conditions, table, tryOut } from './model.ts';
import { type Axis, rangeOf } from './shown.ts';

const fields = {
  outdoorDryBulb: { of: 'outdoorDryBulb', step: { ip: 0.5, si: 0.2 } },
  enteringWetBulb: { of: 'entering.wetBulb', step: { ip: 0.5, si: 0.2 } },
  dryAirFlow: { of: 'airflow.volumeFlow', step: { ip: 10, si: 5 } },
  enteringDryBulb: { of: 'entering.dryBulb', step: { ip: 0.5, si: 0.2 } },
} as const;

/** The flow is shown as the volume that it is in standard air. */
const volume = (dryAirFlow: number) => standardVolumeFlow(dryAirFlow);

/** One coordinate of the place, or of the air, to try out. */
export function Slider({ axis, at: where = 'try' }: { axis: Axis; at?: 'try' | 'step' }) {
  const at = conditions.value?.[axis];
  const range = table.value ? rangeOf(table.value, axis) : null;
  if (at === undefined) return <Unknown axis={axis} />;
  const isFlow = axis === 'dryAirFlow';
  const [low, high] = range ?? [at, at];
  const { of, step } = fields[axis];
  return (
    <SlideField
      id={`${where}-${axis}`}
      of={of}
      name={tryWords[axis]}
      hint={isFlow ? tryWords.standardAir : undefined}
      value={isFlow ? volume(at) : at}
      range={isFlow ? [volume(low), volume(high)] : [low, high]}
      step={step[system.value]}
      fixed={whyFixed(axis, range)}
      onValue={(si) => tryOut({ [axis]: isFlow ? si / volume(1) : si })}
    />
  );
}

function whyFixed(axis: Axis, range: readonly [number, number] | null): string | null {
  if (axis === 'dryAirFlow' && !range) return tryWords.noFlow;
  return axis === 'enteringDryBulb' && !range ? tryWords.noDryBulb : null;
}

function Unknown({ axis }: { axis: Axis }) {
  return (
    <p class="hint">
      <b>{tryWords[axis]}.</b> {axis === 'dryAirFlow' ? tryWords.noFlow : tryWords.noDryBulb}
    </p>
  );
}
