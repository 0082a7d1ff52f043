import type { Family } from '~/charts/moistAir/families.ts';
import { airChart } from '~/words/en/moistAir.ts';
import { lazy } from '../lazy.tsx';
import { families, toggleFamily, view } from './view.ts';

const UndoKey = lazy(() => import('./late/index.ts').then((late) => late.UndoKey));

const shown: readonly Family[] = ['relativeHumidity', 'wetBulb', 'enthalpy', 'specificVolume', 'grid'];

/** Which lines are on the chart, and how close it is looked at. */
export function Toolbar({ without = [] }: { without?: readonly Family[] }) {
  const close = view.value === 'process';
  return (
    <div class="air-tools">
      <div role="group" aria-label={airChart.lines} class="air-toggles">
        {shown
          .filter((family) => !without.includes(family))
          .map((family) => (
            <button
              key={family}
              type="button"
              class="air-toggle"
              aria-pressed={families.value.includes(family) ? 'true' : 'false'}
              onClick={() => toggleFamily(family)}
            >
              {airChart.families[family]}
            </button>
          ))}
      </div>
      <span class="air-undo">
        <UndoKey />
      </span>
      <button
        type="button"
        class="plain-button"
        onClick={() => {
          view.value = close ? 'whole' : 'process';
        }}
      >
        {close ? airChart.view.whole : airChart.view.process}
      </button>
    </div>
  );
}
