/** The demo with two ways to its airflow: what its plate shows, and the fan table of its blower. Invented; only the airflow sheet shows it. */
import { demoJob } from './demo.ts';
import type { Entered, Job, UnitKey } from './types.ts';

const typed = (text: string, unit: UnitKey): Entered => ({ text, unit, origin: 'typed' });

export const airflowDemo: Job = {
  ...demoJob,
  entered: {
    ...demoJob.entered,
    'flowGrid.normal': typed('0.42', 'inwcDuct'),
    'flowGrid.withGrid': typed('0.38', 'inwcDuct'),
    'fanTable.supplyStatic': typed('0.26', 'inwcDuct'),
    'fanTable.returnStatic': typed('-0.20', 'inwcDuct'),
  },
  chosen: {
    ...demoJob.chosen,
    'airflow.use': 'together',
    'flowGrid.shownAs': 'actual',
    'fanTable.motor': 'fixedSpeed',
    'fanTable.column': '2',
  },
  tables: {
    ...demoJob.tables,
    'flowGrid.plates': { columns: [{ key: 'flow', unit: 'cfm' }], rows: [['1,122']] },
    fanTable: {
      columns: [
        { key: 'static', unit: 'inwcDuct' },
        { key: 'flow1', unit: 'cfm' },
        { key: 'flow2', unit: 'cfm' },
      ],
      rows: [
        ['0.3', '1,090', '1,255'],
        ['0.5', '1,015', '1,185'],
        ['0.7', '925', '1,100'],
      ],
    },
  },
};
