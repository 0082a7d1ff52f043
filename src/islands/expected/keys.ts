/** The place under the arrow keys: across is outdoors, up is the wet bulb; with Shift or Page ten times as far; Home and End the table’s ends. */
import type { SurfaceFrame } from '~/charts/surface/frame.ts';
import type { Place } from '~/charts/surface/reading.ts';
import type { System } from '~/job/types.ts';
import { displayUnit, fromSi, toSi } from '~/job/units.ts';

/** Tenths of a degree of the page's system. */
const step = { ip: 5, si: 2 } as const;

const strides: Readonly<Record<string, readonly [across: number, up: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowDown: [0, -1],
  ArrowUp: [0, 1],
  PageDown: [0, -10],
  PageUp: [0, 10],
};

export type Key = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'altKey' | 'ctrlKey' | 'metaKey'>;

/** Where a key carries the place; `null` for a key that moves nothing. */
export function strideOf(event: Key, at: Place, frame: SurfaceFrame, system: System): Place | null {
  if (event.altKey || event.ctrlKey || event.metaKey) return null;
  const { outdoor } = frame.rows;
  if (event.key === 'Home') return { ...at, outdoorDryBulb: outdoor[0] as number };
  if (event.key === 'End') return { ...at, outdoorDryBulb: outdoor.at(-1) as number };
  const stride = strides[event.key];
  if (!stride) return null;
  const times = (event.shiftKey && !event.key.startsWith('Page') ? 10 : 1) * step[system];
  return {
    outdoorDryBulb: held(stepped(at.outdoorDryBulb, stride[0] * times, system), frame.outdoor),
    enteringWetBulb: held(stepped(at.enteringWetBulb, stride[1] * times, system), frame.wetBulb),
  };
}

const held = (at: number, [low, high]: readonly [number, number]) => Math.min(high, Math.max(low, at));

function stepped(si: number, tenths: number, system: System): number {
  if (tenths === 0) return si;
  const unit = displayUnit.temperature[system];
  return toSi(Math.round(fromSi(si, unit) * 10 + tenths) / 10, unit);
}
