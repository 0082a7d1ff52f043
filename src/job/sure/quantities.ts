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
    article: 'side-by-side',
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
    article: 'airflow',
  },
} as const satisfies Record<string, Quantity>;
