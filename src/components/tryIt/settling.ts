import { coilLoad, fromFahrenheit, minute, moistAir, type NotSteady, steady } from '~/calc/index.ts';
import { ahead, dial } from './ahead.ts';

/** Minutes: how long the invented record is, and when somebody opens a damper in it. */
export const record = { length: 70, change: 40, every: 0.5 } as const;

/** A start that dies away, with so many minutes to go to a third of it. */
const fading = (time: number, minutes: number) => (time < 0 ? 0 : Math.exp(-time / minutes));

/** The two airs of the record at a minute after the start: dry bulbs in °F. The house cools, the coil fills, the valve hunts a little. */
function airsAt(time: number) {
  const opened = time - record.change;
  const damper = opened < 0 ? 0 : fading(opened, 4);
  const hunting = 0.1 * Math.sin((2 * Math.PI * time) / 5);
  return {
    entering: {
      dryBulb: 75 + 2 * fading(time, 8) + 1.5 * damper,
      relativeHumidity: 0.5 + 0.04 * fading(time, 8) + 0.03 * damper,
    },
    leaving: {
      dryBulb: 56 + 15 * fading(time, 3) + damper + hunting,
      relativeHumidity: 0.88 - 0.12 * fading(time, 6),
    },
  };
}

const times = Array.from({ length: record.length / record.every + 1 }, (_, i) => i * record.every);

/** What the coil takes from each kilogram of dry air over the record, over what it takes at its end: minute and share. */
export const course: readonly (readonly [minute: number, share: number])[] = (() => {
  const taken = times.map((time) => {
    const { entering, leaving } = airsAt(time);
    const air = ({ dryBulb, relativeHumidity }: typeof entering) =>
      moistAir({ dryBulb: fromFahrenheit(dryBulb), relativeHumidity });
    return coilLoad({ entering: air(entering), leaving: air(leaving), dryAirFlow: 0.6 }).total;
  });
  const last = taken.at(-1) ?? 1;
  return taken.map((one, i) => [times[i] ?? 0, Math.round((1000 * one) / last) / 1000] as const);
})();

/** Why a window is not steady, in the order of the row's figure; the first stands for none. */
export const reasons = [
  'none',
  'tooEarly',
  'tooShort',
  'tooFewRows',
  'gap',
  'range',
  'trend',
] as const satisfies readonly ('none' | NotSteady['code'])[];

/**
 * The record looked at so many minutes after the start, with all that was known by then: the place of the first reason why the
 * window that ends there is not steady, its drift, relative, and the minute before which no window may begin.
 */
export function seenAt(time: number): readonly [reason: number, trend: number, notBefore: number] {
  const seen = times.filter((at) => at <= time);
  const column = (of: (airs: ReturnType<typeof airsAt>) => number) => seen.map((at) => of(airsAt(at)));
  const { notSteady, trend, notBefore } = steady({
    time: seen.map((at) => at * minute),
    columns: {
      'entering.dryBulb': column(({ entering }) => fromFahrenheit(entering.dryBulb)),
      'entering.humidity': column(({ entering }) => entering.relativeHumidity),
      'leaving.dryBulb': column(({ leaving }) => fromFahrenheit(leaving.dryBulb)),
      'leaving.humidity': column(({ leaving }) => leaving.relativeHumidity),
    },
    measure: 'relativeHumidity',
    startedAt: 0,
    changes: time >= record.change ? [record.change * minute] : [],
  });
  const code = notSteady[0]?.code ?? 'none';
  return [reasons.indexOf(code), trend ?? 0, (notBefore ?? 0) / minute];
}

export const settling = ahead([dial(10, record.length, 1, 18)], seenAt);
