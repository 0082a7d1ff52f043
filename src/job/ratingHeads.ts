/** The rows or columns of the maker's table between which a reading lies: from the usual series, unless typed. */
import { format } from './format.ts';
import type { QuantityKey } from './quantities.ts';
import type { BadCode, Read } from './read.ts';
import type { System } from './types.ts';

export interface Head {
  /** The field that changes it. */
  readonly key: QuantityKey;
  /** °C. */
  readonly si: number;
  /** The bare number in the system shown. */
  readonly label: string;
  readonly from: 'series' | 'typed';
  /** The reading is on this printed line, and no other is needed. */
  readonly onPrintedLine: boolean;
  /** What is wrong with what was typed for it; figures are asked for at heads without a problem only. */
  readonly problem: BadCode | 'equal' | null;
}

export interface HeadsInput {
  readonly at: number;
  readonly keys: readonly [low: QuantityKey, high: QuantityKey];
  readonly typed: readonly [low: Read, high: Read];
  /** °C, ascending; empty where every head is typed. */
  readonly series: readonly number[];
  readonly tolerance: number;
  readonly system: System;
}

interface Slot {
  readonly si: number;
  readonly from: Head['from'];
  /** The index of the field. */
  readonly field: 0 | 1;
}

/** One or two heads, ascending; or the fields that must be typed first. A reading beyond all of them gets the nearest two. */
export function headsAround(input: HeadsInput): readonly Head[] | { readonly needs: readonly QuantityKey[] } {
  const { at, keys, typed, series, tolerance } = input;
  const typedSlots = ([0, 1] as const).flatMap((field): Slot[] => {
    const reading = typed[field];
    return reading.state === 'read' ? [{ si: reading.si, from: 'typed', field }] : [];
  });
  const near = ({ si }: { si: number }) => Math.abs(si - at) <= tolerance;
  const slots = typedSlots.length === 2 ? typedSlots : completed(typedSlots[0], series, at, tolerance);
  const equal = slots.length === 2 && headKey(slots[0]?.si ?? 0) === headKey(slots[1]?.si ?? 0);
  const single = equal ? undefined : slots.find(near);
  if (single === undefined && slots.length < 2) {
    return { needs: keys.filter((_, field) => typed[field]?.state !== 'read') };
  }
  const shown = single === undefined ? [...slots].sort((a, b) => a.si - b.si) : [single];
  return shown.map((slot, index): Head => {
    const reading = typed[slot.field];
    return {
      key: keys[slot.field],
      si: slot.si,
      label: headLabel(slot.si, input.system),
      from: slot.from,
      onPrintedLine: single !== undefined,
      problem: reading.state === 'bad' ? reading.code : equal && index === 1 ? 'equal' : null,
    };
  });
}

/** The pair that the series gives, one of them typed or none. */
function completed(typed: Slot | undefined, series: readonly number[], at: number, tolerance: number): Slot[] {
  if (typed === undefined) {
    const [low, high] = neighbours(series, at);
    const on = series.find((si) => Math.abs(si - at) <= tolerance);
    if (on !== undefined) return [{ si: on, from: 'series', field: 0 }];
    if (low === undefined || high === undefined) return [];
    return [
      { si: low, from: 'series', field: 0 },
      { si: high, from: 'series', field: 1 },
    ];
  }
  // A printed line on the reading itself cannot be in a table whose line there was typed over.
  const others = series.filter((si) => headKey(si) !== headKey(typed.si) && Math.abs(si - at) > tolerance);
  const across = others.filter((si) => (typed.si > at ? si < at : si > at));
  const nearest = nearestTo(across.length > 0 ? across : others, at);
  return nearest === undefined ? [typed] : [typed, { si: nearest, from: 'series', field: typed.field === 0 ? 1 : 0 }];
}

/** The two of an ascending series around a value; beyond it, its two nearest. */
function neighbours(series: readonly number[], at: number): readonly number[] {
  const above = series.findIndex((si) => si > at);
  const high = above < 0 ? series.length - 1 : Math.max(1, above);
  return series.slice(Math.max(0, high - 1), high + 1);
}

function nearestTo(values: readonly number[], at: number): number | undefined {
  return [...values].sort((a, b) => Math.abs(a - at) - Math.abs(b - at))[0];
}

/** A head's value as it stands in a row of the table: °C to 1e-6. */
export function headKey(si: number): string {
  return String(Math.round(si * 1e6) / 1e6 + 0);
}

function headLabel(si: number, system: System): string {
  return format(si, system === 'ip' ? 'degF' : 'degC', 1).replace(/\.0$/, '');
}
