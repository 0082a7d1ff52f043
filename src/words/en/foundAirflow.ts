/** The airflow of the capacity sheet where it was found on the sheet made for that. */
import type { AirflowMethod } from '../../calc/airflow/methods.ts';

export const foundAirflow = {
  way: 'Find the airflow',
  from: (flow: string, by: string) => `From Find the airflow, ${flow}: standard air, ${by}.`,
  moving: (flow: string) => `As it moved where it was measured: ${flow}.`,
  sure: (u: string) => `Standard uncertainty ${u}.`,
  notYet: 'The sheet that finds the airflow has no figure yet; its figure would count here.',
  kept: (flow: string) => `The ${flow} typed here is kept beside it.`,
  typed: 'Count the typed figure',
  by: {
    readout: 'by the control’s readout',
    fanTable: 'by the fan table',
    flowGrid: 'by the flow grid',
    hood: 'by a hood at the returns',
    traverse: 'by a traverse of the duct',
    temperatureRise: 'by the temperature rise',
    pressureMatch: 'by pressure matching',
    grille: 'by a vane at the grilles',
    together: 'by several ways together',
  } as const satisfies Record<AirflowMethod | 'together', string>,
} as const;
