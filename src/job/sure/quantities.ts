/** What is asked where it is asked how sure the readings are. */
import { fahrenheitDegree } from '../../calc/units.ts';
import type { Quantity } from '../types.ts';

export const sureQuantities = {
  /** The supply probe less the return probe, where both show wet bulb. */
  'sideBySide.wetBulb': {
    kind: 'temperatureDifference',
    symbol: 'Δt*',
    ip: 'degFStep',
    si: 'degCStep',
    decimals: { ip: 1, si: 1 },
    usual: [-fahrenheitDegree, fahrenheitDegree],
    possible: [-10, 10],
  },
  /** Half-width of the typed airflow, of the figure. */
  'airflow.limit': {
    kind: 'fraction',
    symbol: '±V̇',
    ip: 'percent',
    si: 'percent',
    decimals: { ip: 0, si: 0 },
    usual: [0.02, 0.2],
    possible: [0.005, 0.5],
  },
  /** Water caught from every drain of the coil, and for how long. */
  'condensate.mass': {
    kind: 'mass',
    symbol: 'm',
    ip: 'lb',
    si: 'kg',
    decimals: { ip: 2, si: 2 },
    usual: [0.3, 6],
    possible: [0.01, 100],
  },
  'condensate.duration': {
    kind: 'duration',
    symbol: 't',
    ip: 'minute',
    si: 'minute',
    decimals: { ip: 0, si: 0 },
    usual: [1200, 7200],
    possible: [60, 86_400],
  },
} as const satisfies Record<string, Quantity>;
