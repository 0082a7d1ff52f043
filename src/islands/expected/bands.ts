/** The bands of the surface, worked out after the page stands: first roughly under a moving hand, then finely once it rests. */
import { effect, signal } from '@preact/signals';
import { type Bands, bandsOf, type Detail, sampled } from '~/charts/surface/contours.ts';
import { type SurfaceFrame, surfaceFrame } from '~/charts/surface/frame.ts';
import { fieldOf } from '~/charts/surface/reading.ts';
import type { Levels, SurfaceScale } from '~/charts/surface/scale.ts';
import { system } from '../jobStore.ts';
import { air, isSurface, levels, own, quantity, scale, table } from './model.ts';

/** What a surface is drawn from: it changes as a whole. */
export interface Drawn {
  readonly frame: SurfaceFrame;
  readonly bands: Bands;
  readonly levels: Levels;
  readonly scale: SurfaceScale;
}

export const drawn = signal<Drawn | null>(null);
/** Px that the surface has; 0 while it is not shown. */
export const surfaceWidth = signal(0);

const rest = 160;

/** Follows the table, the air and the width. Returns what ends that. */
export function followBands(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = effect(() => {
    draw(drawn.peek() ? 'quick' : 'fine');
    clearTimeout(timer);
    timer = setTimeout(() => draw('fine'), rest);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}

function draw(detail: Detail): void {
  const [of, steps, width] = [table.value, levels.value, surfaceWidth.value];
  if (!of || !steps || !isSurface.value || width === 0) return;
  const around = own.value ? [own.value] : [];
  const frame = surfaceFrame({ table: of, system: system.value, width, around });
  const samples = sampled(frame, fieldOf(of, quantity.value, air.value), detail);
  drawn.value = { frame, bands: bandsOf(frame, samples, steps), levels: steps, scale: scale.value };
}
