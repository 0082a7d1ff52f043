import type { RefObject } from 'preact';
import { placeAt, type SurfaceFrame, xOf, yOf } from '~/charts/surface/frame.ts';
import { displayUnit, fromSi } from '~/job/units.ts';
import { surfaceSay } from '~/words/en/expected.ts';
import { holds, keepStill, takeHold } from '../hold.ts';
import { system } from '../jobStore.ts';
import { strideOf } from './keys.ts';
import { backToJob, place, quantity, reading, tryOut } from './model.ts';
import { figure, placeText } from './said.ts';
import { spotIn } from './spot.ts';

/** Where a hand takes hold of the place: a shortcut to its two fields, by pointer, touch and arrow keys. */
export function Handle({ frame, svg }: { frame: SurfaceFrame; svg: RefObject<SVGSVGElement> }) {
  const at = place.value;
  if (!at) return null;
  const unit = displayUnit.temperature[system.value];
  const shown = (si: number) => Math.round(fromSi(si, unit) * 10) / 10;
  const said = `${placeText(at)}: ${figure(quantity.value, reading.value?.[quantity.value] ?? null)}`;
  return (
    <g
      class="surface-handle"
      role="slider"
      tabindex={0}
      aria-label={surfaceSay.pointName}
      aria-roledescription={surfaceSay.pointRole}
      aria-valuemin={shown(frame.outdoor[0])}
      aria-valuemax={shown(frame.outdoor[1])}
      aria-valuenow={shown(at.outdoorDryBulb)}
      aria-valuetext={said}
      transform={`translate(${xOf(frame, at.outdoorDryBulb)} ${yOf(frame, at.enteringWetBulb)})`}
      onTouchStart={keepStill}
      onPointerDown={takeHold}
      onPointerMove={(event) => {
        if (svg.current && holds(event)) tryOut(placeAt(frame, ...spotIn(svg.current, event)));
      }}
      onPointerUp={(event) => event.stopPropagation()}
      onKeyDown={(event) => {
        if (event.key === 'Escape') return backToJob();
        const to = strideOf(event, at, frame, system.value);
        if (!to) return;
        event.preventDefault();
        tryOut(to);
      }}
    >
      <circle class="surface-ring" r="13" />
      <circle class="surface-grip" r="22" />
    </g>
  );
}
