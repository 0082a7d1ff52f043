import { useEffect } from 'preact/hooks';
import { surfaceSay } from '~/words/en/expected.ts';
import { useWidth } from '../useWidth.ts';
import { surfaceWidth } from './bands.ts';
import { air, isSurface, quantity } from './model.ts';
import { Slices } from './Slices.tsx';
import { Surface } from './Surface.tsx';
import { flowText } from './said.ts';
import { filled, isPhone, showsSlices } from './view.ts';

/** The table drawn: the surface, and on a phone first its two lines. */
export function Figure() {
  const [box, width] = useWidth();
  const surface = !showsSlices.value;
  useEffect(() => {
    surfaceWidth.value = surface ? Math.min(width, 840) : 0;
  }, [surface, width]);
  const flow = air.value.dryAirFlow;
  return (
    <figure class="expected-figure">
      <figcaption class="expected-title">
        <b>{surfaceSay.title[quantity.value]}</b>
        {flow === undefined ? '' : surfaceSay.at(flowText(flow))}
      </figcaption>
      <div ref={box}>{surface ? <Surface /> : <Slices stacked width={Math.min(width, 560)} />}</div>
      {surface && <p class="hint">{surfaceSay.hint}</p>}
      {isPhone.value && isSurface.value && (
        <p class="tools">
          <button
            type="button"
            class="plain-button"
            aria-pressed={filled.value ? 'true' : 'false'}
            onClick={() => {
              filled.value = !filled.value;
            }}
          >
            {filled.value ? surfaceSay.showSlices : surfaceSay.showSurface}
          </button>
        </p>
      )}
    </figure>
  );
}
