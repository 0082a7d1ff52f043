/** Figures that a report of somebody else's may show. They are looked at on the page that checks it, and kept with no job. */
import { inchOfWater, tonOfRefrigeration } from '../../calc/units.ts';
import type { Quantity } from '../types.ts';
import { toSi } from '../units.ts';

const power = {
  kind: 'power',
  ip: 'btuh',
  si: 'kw',
  decimals: { ip: 0, si: 2 },
  usual: [tonOfRefrigeration, 6 * tonOfRefrigeration],
  possible: [0.25 * tonOfRefrigeration, 40 * tonOfRefrigeration],
  article: 'reading-your-report',
} as const;
const share = {
  kind: 'fraction',
  ip: 'percent',
  si: 'percent',
  decimals: { ip: 0, si: 0 },
  usual: [0.5, 1.15],
  possible: [0.02, 3],
  article: 'reading-your-report',
} as const;

export const readReportQuantities = {
  'report.capacity': { ...power, symbol: 'Q' },
  'report.expected': { ...power, symbol: 'Qₑ' },
  'report.share': { ...share, symbol: 'r' },
  'report.low': { ...share, symbol: 'r₁' },
  'report.high': { ...share, symbol: 'r₂' },
  'report.temperatureDrop': {
    kind: 'temperatureDifference',
    symbol: 'Δt',
    ip: 'degFStep',
    si: 'degCStep',
    decimals: { ip: 1, si: 1 },
    usual: [toSi(10, 'degFStep'), toSi(28, 'degFStep')],
    possible: [toSi(1, 'degFStep'), toSi(60, 'degFStep')],
    article: 'reading-your-report',
  },
  'report.static': {
    kind: 'airPressure',
    symbol: 'p',
    ip: 'inwcDuct',
    si: 'paDuct',
    decimals: { ip: 2, si: 0 },
    usual: [0.1 * inchOfWater, 1.2 * inchOfWater],
    possible: [0, 4 * inchOfWater],
    article: 'reading-your-report',
  },
} as const satisfies Record<string, Quantity>;
