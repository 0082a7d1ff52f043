import { amount } from '../trace.ts';
import type { Remark, Trace } from '../types.ts';
import type { Band, FanTableReading, Motor } from './fanTable.ts';
import type { FanPoint } from './fanTableRead.ts';
import { remark } from './found.ts';
import { practice } from './limits.ts';

/** The working of `airflowFromFanTable`. */
export function traceRead(
  external: number,
  ratio: number,
  tableStatic: number,
  { low, high, flow }: FanPoint,
  band: Band,
  motor: Motor,
  t?: Trace,
): void {
  const at = amount('pₜ', 'airPressure', tableStatic);
  if (motor === 'fixedSpeed') {
    t?.({
      id: 'airflow.fanTable.density',
      equation: 'pₜ = pₑ/(ρ/ρ₀)',
      puts: [amount('pₑ', 'airPressure', external), amount('ρ/ρ₀', 'ratio', ratio)],
      gives: at,
      source: 'fanLaws',
    });
  }
  t?.({
    id: 'airflow.fanTable.read',
    equation: 'V̇ₜ = V̇₁ + (V̇₂ − V̇₁)·(pₜ − p₁)/(p₂ − p₁)',
    puts: [
      at,
      amount('p₁', 'airPressure', low.static),
      amount('p₂', 'airPressure', high.static),
      amount('V̇₁', 'volumeFlow', low.flow),
      amount('V̇₂', 'volumeFlow', high.flow),
    ],
    gives: amount('V̇ₜ', 'volumeFlow', flow),
    source: 'makersTable',
  });
  if (band.half === 0) return;
  t?.({
    id: 'airflow.fanTable.altitude',
    equation: 'V̇ = (V̇ₗ + V̇ₕ)/2',
    puts: [amount('V̇ₗ', 'volumeFlow', band.middle - band.half), amount('V̇ₕ', 'volumeFlow', band.middle + band.half)],
    gives: amount('V̇', 'volumeFlow', band.middle),
    source: 'fanLaws',
  });
}

/** An altitude that matters: a band of more than 1 %. Our choice. */
const bandSaid = 0.01;

/** What is odd about a reading of a fan table. */
export function fanTableRemarks(
  { motor: said }: FanTableReading,
  motor: Motor,
  holds: boolean | null,
  external: number,
  band: number,
): readonly Remark[] {
  const pressure = amount('pₑ', 'airPressure', external);
  const plateau = [
    amount('p₁', 'airPressure', practice.plateau[0]),
    amount('p₂', 'airPressure', practice.plateau[1]),
  ] as const;
  return [
    ...(external >= practice.highStatic
      ? [remark('highExternalStatic', 'doubt', pressure, amount('p', 'airPressure', practice.highStatic))]
      : []),
    ...(holds && said !== 'fixedSpeed' ? [remark('fanHoldsAirflow', 'note', ...plateau)] : []),
    ...(holds && said === 'fixedSpeed' ? [remark('fanSeemsToHold', 'doubt', ...plateau)] : []),
    ...(holds === false && said === 'constantAirflow' ? [remark('fanDoesNotHold', 'doubt', ...plateau)] : []),
    ...(motor === 'constantAirflow' && external > practice.plateau[1]
      ? [remark('pastPlateau', 'doubt', pressure, plateau[1])]
      : []),
    ...(band > bandSaid ? [remark('motorAtAltitude', 'note', amount('Δ', 'fraction', band))] : []),
  ];
}
