/** Words of the report's second page, for the trade. */
import type { Assumed } from '../../job/measuredTest.ts';

export const trade = {
  readings: 'Readings',
  air: 'Air',
  where: 'Where',
  temperature: 'Dry bulb',
  humidity: { relativeHumidity: 'Humidity', wetBulb: 'Wet bulb' },
  limits: 'Limits',
  probe: 'Probe',
  at: 'Read',
  rows: {
    entering: { name: 'Return (entering)', where: 'before the coil' },
    leaving: { name: 'Supply (leaving)', where: 'after the coil' },
    outdoors: { name: 'Outdoors', where: 'into the outdoor unit' },
  },
  mean: (count: number) => `mean of ${count} readings`,
  points: (count: number) => `${count} points of the plane`,
  record: 'mean of a record',
  notSaid: '–',
  limit: (text: string) => `±${text}`,
  comesTo: <T>(cooling: T, drying: T, drop: string): readonly (string | T)[] => [
    'Cooling (sensible) ',
    cooling,
    ', drying (latent) ',
    drying,
    `; it leaves ${drop} cooler than it comes.`,
  ],
  unseen: 'none that these probes can see',
  airflow: 'Airflow',
  airflowSaid: (flow: string, method: string, place: string, kind: string, limit: string) =>
    [`${flow}, by: ${method}`, place, kind, limit && `limit ±${limit}`].filter(Boolean).join('; '),
  place: { entering: 'at the return', leaving: 'at the supply', unsure: 'return or supply not known' },
  kind: { actual: 'as it moves there', standard: 'as standard air', unsure: 'actual or standard not known' },
  each: (flow: string) => `${flow} for the size on the nameplate.`,
  speed: 'Speed',
  table: 'The maker’s figures that were read',
  tableHead: 'Outdoors',
  wetBulb: (at: string) => `Wet bulb ${at}`,
  dryBulb: (at: string) => `dry bulb ${at}`,
  flow: (at: string) => at,
  sensibleBelow: 'Total, and below it the sensible part.',
  noTable: 'No table of the maker’s: published curves through the certified capacity stand for it.',
  page: (page: string) => `From: ${page}.`,
  basis: {
    net: 'Blower’s heat taken off (net).',
    gross: 'Blower’s heat not taken off (gross).',
    unsure: 'Net or gross not known.',
  },
  steps: 'From the nameplate to what it should make',
  chart: 'What the coil does to the air',
  steady: 'How steady it was',
  noRecord: 'that it was steady (no record was kept)',
  steadySince: 'steady since here',
  steadySummary: (minutes: string, low: string, high: string) =>
    `The computed capacity over ${minutes} minutes, relative to its mean at the end: from ${low} to ${high}.`,
  steadyAxis: 'minutes before the last reading',
  sure: 'What makes the range: the five largest causes',
  sureSaid: (u: string, by: string) => `Shares of the variance. Standard uncertainty ${u} points, ${by}.`,
  byFirstOrder: 'to first order (JCGM 100)',
  byDraws: 'the ends by 100,000 draws (JCGM 101)',
  instruments: 'Instruments and calibration',
  instrumentsEmpty: 'Nobody has named them.',
  calibrated: (text: string) => `Calibrated: ${text}`,
  checked: (temperature: string, humidity: string) =>
    `Checked side by side: the supply probe showed ${[temperature, humidity].filter(Boolean).join(' and ')} more.`,
  again: 'Compared again at the end.',
  unchecked: 'The two probes were not compared side by side.',
  standards: {
    salt: 'Humidity held against a saturated salt.',
    wetBulb: 'Humidity held against an aspirated wet bulb.',
  },
  iceBath: 'Temperature held against an ice bath.',
  assumed: 'Taken for granted',
  assumedNone: 'Nothing: every value was given.',
  changes: 'Changed after locking',
  changesNone: 'Nothing.',
  change: (name: string, was: string, now: string, at: string) =>
    `${name}: ${was === '' ? 'empty' : was}, now ${now === '' ? 'empty' : now}${at && ` (${at})`}`,
  remarks: 'Remarks',
  sheetSays: 'What the sheet remarks',
  signatures: 'Signatures',
  signTester: 'Tester, date',
  signOwner: 'Owner, date: seen',
} as const;

/** What nobody said and the test takes for granted, with what is taken. */
export const assumedWords: Readonly<Record<Assumed, (value: string) => string>> = {
  altitude: () => 'sea level',
  'airflow.place': (value) => `airflow ${value}`,
  'airflow.kind': (value) => `airflow ${value}`,
  'blower.place': (value) => `blower ${value}`,
  'rating.basis': () => 'table: between net and gross',
  'probeLimits.dryBulb': (value) => `probes ±${value}, dry bulb`,
  'probeLimits.relativeHumidity': (value) => `probes ±${value}, humidity`,
  'probeLimits.wetBulb': (value) => `probes ±${value}, wet bulb`,
  line: (value) => `the line at ${value}`,
};

/** Tables of a job that were changed. */
export const changedTables: Readonly<Record<string, string>> = {
  rating: 'the maker’s figures',
  ratingSheet: 'the maker’s whole table',
  ratingAirflow: 'the maker’s factors for the airflow',
  'entering.readings': 'return readings',
  'leaving.readings': 'supply readings',
  supplyPoints: 'points of the supply plane',
};
