import type { Airflow } from '../dryAirFlow.ts';
import type { SourceKey } from '../sources.ts';
import { amount } from '../trace.ts';
import type { Amount, Kind, Trace } from '../types.ts';
import { type Cause, ofLimit } from './found.ts';
import { type AirThere, type Gauge, gaugeCause, zeroCause } from './instruments.ts';
import { airflowLimits } from './limits.ts';

/**
 * What reads the velocity: a Pitot tube (its readings are velocity pressures, Pa), a vane (velocity as it is, m/s), or a
 * thermal anemometer, which senses mass and shows the velocity that standard air would have, unless it converts by itself.
 */
export type Anemometer = 'pitot' | 'vane' | 'thermal' | 'thermalActual';

interface Physics {
  readonly range: readonly [number, number];
  /** Velocity of a reading, m/s: as it is, or of standard air for `standard`. */
  readonly velocity: (reading: number, air: AirThere) => number;
  readonly standard: boolean;
  readonly equation: string;
  readonly reading: readonly [symbol: string, kind: Kind];
  readonly source: SourceKey;
}

const asShown = { range: airflowLimits.velocity, velocity: (reading: number) => reading, equation: 'w = w' } as const;

export const physics: Readonly<Record<Anemometer, Physics>> = {
  pitot: {
    range: airflowLimits.velocityPressure,
    velocity: (pressure, { density }) => Math.sqrt((2 * pressure) / density),
    standard: false,
    equation: 'w = √(2·p/ρ)',
    reading: ['p', 'airPressure'],
    source: 'velocityPressure',
  },
  vane: { ...asShown, standard: false, reading: ['w', 'velocity'], source: 'definition' },
  thermal: { ...asShown, standard: true, reading: ['w₀', 'velocity'], source: 'thermalAnemometer' },
  thermalActual: { ...asShown, standard: false, reading: ['w', 'velocity'], source: 'definition' },
};

/** Standard uncertainties of the instruments, common practice, no source: ±5 % for a vane or a hot wire, a tube held askew. */
const vane = ofLimit(0.05);
const yaw = 0.01;

/** What the instrument adds; `reading` is the mean of what it shows: of a Pitot tube the pressure, Pa, that its gauge had to read. */
export function anemometerCauses(instrument: Anemometer, gauge: Gauge, reading: number): readonly Cause[] {
  if (instrument === 'pitot') {
    return [
      gaugeCause(gauge, 0.5),
      zeroCause('traverse.zero', reading, 0.5),
      { name: 'traverse.yaw', u: yaw, basis: 'commonPractice' },
    ];
  }
  const name = instrument === 'vane' ? 'vane' : 'hotWire';
  return [{ name: `instrument.${name}`, u: vane, basis: 'commonPractice', shape: 'rectangular' }];
}

/** A mean velocity, m/s, through an area, m², and the air that it is a volume of. */
export function flowThrough(velocity: number, area: number, standard: boolean, air: AirThere): Airflow {
  return { volumeFlow: velocity * area, at: standard ? 'standard' : { specificVolume: air.specificVolume } };
}

/** The working of one reading and of the mean. */
export function traceVelocity(
  instrument: Anemometer,
  air: AirThere,
  reading: number,
  mean: { readonly velocity: number; readonly count: number },
  t?: Trace,
): void {
  if (!t) return;
  const { equation, reading: shown, velocity, source } = physics[instrument];
  if (instrument === 'pitot') {
    t({
      id: 'airflow.velocity',
      equation,
      puts: [amount(...shown, reading), amount('ρ', 'density', air.density)],
      gives: amount('w', 'velocity', velocity(reading, air)),
      source,
    });
  }
  t({
    id: 'airflow.meanVelocity',
    equation: 'w̄ = Σw/n',
    puts: [amount('Σw', 'velocity', mean.velocity * mean.count), amount('n', 'count', mean.count)],
    gives: amount('w̄', 'velocity', mean.velocity),
    source: 'traverseRules',
  });
}

/** The working of the flow from it. */
export function traceFlow(symbol: string, velocity: number, area: number, t?: Trace, ...more: readonly Amount[]): void {
  t?.({
    id: 'airflow.flow',
    equation: more.length > 0 ? `${symbol} = w̄·A·${more.map((one) => one.symbol).join('·')}` : `${symbol} = w̄·A`,
    puts: [amount('w̄', 'velocity', velocity), amount('A', 'area', area), ...more],
    gives: amount(
      symbol,
      'volumeFlow',
      more.reduce((product, { value }) => product * value, velocity * area),
    ),
    source: 'definition',
  });
}
