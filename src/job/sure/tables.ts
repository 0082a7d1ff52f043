/** The tables of how sure: stamped readings of both probes in one air, and the supply air from point to point. */
const pairColumns = [
  'time',
  'enteringDryBulb',
  'enteringRelativeHumidity',
  'enteringWetBulb',
  'leavingDryBulb',
  'leavingRelativeHumidity',
  'leavingWetBulb',
] as const;

export const sureTables = {
  'pairs.return': pairColumns,
  'pairs.supply': pairColumns,
  /** Once more, when the test is over. */
  'pairs.end': pairColumns,
  /** Each probe in its own air, and the two exchanged, line by line in turn. */
  'pairs.swap': pairColumns,
  /** Each probe in its own air, until the test is steady. */
  'pairs.steady': pairColumns,
  /** How far each fifth of a steady window lies from the means of it, SI: `to` names the window. */
  'steady.batches': [
    'to',
    'entering.dryBulb',
    'entering.humidity',
    'leaving.dryBulb',
    'leaving.humidity',
    'outdoorDryBulb',
  ],
  /** The end of a steady record, thinned, SI: a humidity in °C is a wet bulb; `since`, the same in every row, is when it became steady. */
  'log.trace': [
    'time',
    'entering.dryBulb',
    'entering.humidity',
    'leaving.dryBulb',
    'leaving.humidity',
    'capacity',
    'since',
  ],
  /** One row: what each probe showed of the standards that it was held against, and what an aspirated wet bulb said beside it. */
  standards: [
    'enteringDryBulb',
    'leavingDryBulb',
    'enteringRelativeHumidity',
    'leavingRelativeHumidity',
    'knownRelativeHumidity',
    'enteringWetBulb',
    'leavingWetBulb',
    'knownWetBulb',
  ],
  supplyPoints: ['dryBulb'],
} as const;

export type SureTableKey = keyof typeof sureTables;
