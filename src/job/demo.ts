/** The demo: an invented job on an invented machine, for looking around. It is never stored and never changed. */
import { demoTable } from './demoTable.ts';
import type { Entered, Job, UnitKey } from './types.ts';

/** A time without a zone: the demo is read at 14:32 wherever it is looked at. */
const readAt = '2026-08-12T14:32:00';
const typed = (text: string, unit: UnitKey): Entered => ({ text, unit, origin: 'typed', at: readAt });
const fromSheet = (text: string, unit: UnitKey): Entered => ({ text, unit, origin: 'from sheet' });

export const demoJob: Job = {
  version: 1,
  id: 'demo',
  invented: true,
  entered: {
    'entering.dryBulb': typed('75.0', 'degF'),
    'entering.relativeHumidity': typed('50', 'percent'),
    'leaving.dryBulb': typed('56.0', 'degF'),
    'leaving.relativeHumidity': typed('88', 'percent'),
    'airflow.volumeFlow': typed('1,180', 'cfm'),
    outdoorDryBulb: typed('91', 'degF'),
    nominalCapacity: typed('3', 'ton'),
    'blower.power': typed('430', 'watt'),
    'rating.airflow': fromSheet('1,200', 'cfm'),
    'rating.airflowSecond': fromSheet('1,000', 'cfm'),
    'rating.blowerPower': fromSheet('300', 'watt'),
    'rating.enteringDryBulb': fromSheet('80', 'degF'),
    line: typed('90', 'percent'),
    'lineSet.length': typed('45', 'ft'),
    'lineSet.fittings': typed('8', 'ft'),
    'lineSet.lift': typed('10', 'ft'),
    'ducts.supplyArea': typed('180', 'ft2'),
    'ducts.returnArea': typed('40', 'ft2'),
    'ducts.supplyLeakage': typed('4', 'percent'),
    'ducts.returnLeakage': typed('2', 'percent'),
  },
  chosen: {
    humidityAs: 'relativeHumidity',
    'airflow.method': 'flowGrid',
    'equipment.kind': 'airHandler',
    fullSpeed: 'oneSpeed',
    certifiedMatch: 'yes',
    filter: 'clean',
    coil: 'clean',
    sideBySide: 'no',
    'rating.series': '57',
    'rating.unit': 'btuh',
    'rating.basis': 'net',
    'rating.blocks': 'one',
    refrigerant: 'R-410A',
    'lineSet.vaporTube': '7/8',
    'lineSet.ratedVaporTube': '7/8',
    'lineSet.liquidTube': '3/8',
    'lineSet.meteringAt': 'indoors',
    'ducts.where': 'ventedLightShingle',
    'ducts.insulation': 'r6',
  },
  tables: { rating: demoTable },
  notes: {
    address: '14 Sample Lane (invented)',
    system: 'Split heat pump, 3 ton (invented)',
    'outdoor.model': 'invented, no real model',
    'indoor.model': 'invented, no real model',
    tester: 'Demo',
    'rating.page': 'Invented table',
  },
};
