import { Drawn } from '~/charts/Drawn.tsx';
import { sliceDrawing } from '~/charts/surface/slice.ts';
import type { Along } from '~/charts/surface/sliceFrame.ts';
import { surfaceSay } from '~/words/en/expected.ts';
import { system } from '../jobStore.ts';
import { temperature } from '../show.ts';
import { useWidth } from '../useWidth.ts';
import { air, levels, measured, place, quantity, reading, scale, table } from './model.ts';
import { Slider } from './Sliders.tsx';
import { figure, nameOf } from './said.ts';

/** The two lines through the place, side by side where there is room. */
export function SlicesBeside() {
  const [box, width] = useWidth();
  return (
    <div class="expected-slices" ref={box}>
      <Slices width={Math.floor((width - 32) / 2)} stacked={false} />
    </div>
  );
}

/** One below the other each has the slider of its own scale under it. */
export function Slices({ width, stacked }: { width: number; stacked: boolean }) {
  if (width <= 0) return null;
  return (
    <div class={stacked ? 'slices-stacked' : 'slices-beside'}>
      <Slice along="outdoorDryBulb" width={width} />
      {stacked && <Slider axis="outdoorDryBulb" />}
      <Slice along="enteringWetBulb" width={width} />
      {stacked && <Slider axis="enteringWetBulb" />}
    </div>
  );
}

function Slice({ along, width }: { along: Along; width: number }) {
  const [of, at, steps] = [table.value, place.value, levels.value];
  if (!of || !at || !steps || of.axes[along].length < 2) return null;
  const drawing = sliceDrawing({
    table: of,
    along,
    air: air.value,
    place: at,
    scale: scale.value,
    levels: steps,
    system: system.value,
    width,
    measured: measured.value,
  });
  const title =
    along === 'outdoorDryBulb'
      ? surfaceSay.sliceOutdoors(temperature(at.enteringWetBulb))
      : surfaceSay.sliceWetBulb(temperature(at.outdoorDryBulb));
  const here = figure(quantity.value, reading.value?.[quantity.value] ?? null);
  return (
    <figure class="expected-slice">
      <figcaption>{title}</figcaption>
      <Drawn of={drawing} name={`${nameOf(quantity.value)}. ${title}: ${here}.`} />
    </figure>
  );
}
