import { failureOf } from './outcome.ts';
import { amount } from './trace.ts';
import type { CoilLoad, Expectation, Outcome, Trace } from './types.ts';

/** The ratio before its range is worked out. */
export interface BareRatio {
  readonly value: number;
  readonly measured: number;
  readonly expected: number;
}

/**
 * Net capacity measured over net capacity to expect. A load measured without the blower (gross) has this system's own blower
 * heat, W, taken off first, so that both sides are what the rooms get.
 */
export function ratioOf(
  measured: Outcome<CoilLoad>,
  expected: Outcome<Expectation>,
  blower: number,
  t?: Trace,
): Outcome<BareRatio> {
  if (!measured.ok || !expected.ok) return failureOf(measured, expected);
  const net = netOf(measured.value, blower, t);
  const value = net / expected.value.total;
  t?.({
    id: 'ratio',
    equation: 'r = Qₙ/Q₆',
    puts: [amount('Qₙ', 'power', net), amount('Q₆', 'power', expected.value.total)],
    gives: amount('r', 'fraction', value),
    source: 'definition',
  });
  return { ok: true, value: { value, measured: net, expected: expected.value.total } };
}

function netOf({ basis, total }: CoilLoad, blower: number, t?: Trace): number {
  const net = basis === 'gross' ? total - blower : total;
  const off = basis === 'gross';
  t?.({
    id: 'ratio.measured',
    equation: off ? 'Qₙ = Q − qᵦ' : 'Qₙ = Q',
    puts: off ? [amount('Q', 'power', total), amount('qᵦ', 'power', blower)] : [amount('Q', 'power', total)],
    gives: amount('Qₙ', 'power', net),
    source: off ? 'coilModel' : 'definition',
  });
  return net;
}
