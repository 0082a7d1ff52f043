/** A point under the arrow keys: each key is a step of one of its two fields. */
import { saturationHumidityRatio } from '~/calc/humidityRatio.ts';
import { moistAir } from '~/calc/moistAir.ts';
import type { MoistAir } from '~/calc/types.ts';
import type { AirPoint, ChartFrame } from '~/charts/moistAir/frame.ts';
import { chosen } from '~/job/choices.ts';
import type { PointKey } from '~/job/processes.ts';
import { quantityOf, unitOf } from '~/job/quantities.ts';
import type { HumidityMeasure } from '~/job/states.ts';
import { fromSi, toSi } from '~/job/units.ts';
import { job, system } from '../jobStore.ts';
import { states } from './points.ts';

/** The steps of a key, in tenths of a unit: across in temperature, up in humidity; or to an end of the chart. */
type Stride = { readonly across: number; readonly up: number } | { readonly end: 0 | 1 };

const strides: Readonly<Record<string, Stride>> = {
  ArrowLeft: { across: -1, up: 0 },
  ArrowRight: { across: 1, up: 0 },
  ArrowDown: { across: 0, up: -1 },
  ArrowUp: { across: 0, up: 1 },
  PageDown: { across: 0, up: -10 },
  PageUp: { across: 0, up: 10 },
  Home: { end: 0 },
  End: { end: 1 },
};

/** The measure in which a point is given. */
export function measureOf(key: PointKey): HumidityMeasure {
  const ofJob = chosen(job.value, 'humidityAs') === 'wetBulb' ? 'wetBulb' : 'relativeHumidity';
  return states.value.find((state) => state.key === key)?.measure ?? ofJob;
}

/**
 * Where a key carries air that is given by a measure; `null` for a key that moves nothing. The temperature changes while
 * the measure keeps its figure, and the other way round; where that cannot be, the air slides along saturation.
 */
export function stride(
  event: KeyboardEvent,
  air: MoistAir,
  measure: HumidityMeasure,
  frame: ChartFrame,
): AirPoint | null {
  const step = strides[event.key];
  if (!step || event.altKey || event.ctrlKey || event.metaKey) return null;
  const times = event.shiftKey && !event.key.startsWith('Page') ? 10 : 1;
  if ('end' in step) return settle(frame.dryBulb[step.end], air[measure], measure, air.pressure);
  return settle(
    stepped('dryBulb', air.dryBulb, step.across * times),
    stepped(measure, air[measure], step.up * times),
    measure,
    air.pressure,
  );
}

/** A figure some tenths further on; one that stands between two tenths goes on to the next. */
function stepped(measure: 'dryBulb' | HumidityMeasure, si: number, tenths: number): number {
  if (tenths === 0) return si;
  const unit = unitOf(`state.${measure}`, system.value);
  return toSi(Math.round(fromSi(si, unit) * 10 + tenths) / 10, unit);
}

function settle(dryBulb: number, humidity: number, measure: HumidityMeasure, pressure: number): AirPoint {
  const [cold, hot] = quantityOf('state.dryBulb').possible;
  const t = Math.min(hot, Math.max(cold, dryBulb));
  const most = saturationHumidityRatio(t, pressure);
  const [low, high] = quantityOf(`state.${measure}`).possible;
  const wet = { relativeHumidity: 1, wetBulb: t, dewPoint: t, humidityRatio: most }[measure];
  const dry = measure === 'wetBulb' ? moistAir({ dryBulb: t, humidityRatio: 0, pressure }).wetBulb : low;
  const given = Math.min(wet, high, Math.max(low, dry, humidity));
  return moistAir({ dryBulb: t, pressure, [measure]: given });
}
