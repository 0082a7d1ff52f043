/** The lines that are asked of a report, in the order of the page, with the figures that each stands for. */
import type { ChoiceKey } from '../choices.ts';
import type { QuantityKey } from '../quantities.ts';

export interface ReportLine {
  readonly id: string;
  readonly figures: readonly QuantityKey[];
  readonly choice?: ChoiceKey;
}

export const reportLines = [
  { id: 'capacity', figures: ['report.capacity'] },
  { id: 'nameplate', figures: ['nominalCapacity'] },
  { id: 'expected', figures: ['report.expected'] },
  { id: 'share', figures: ['report.share'], choice: 'report.shareOf' },
  { id: 'range', figures: ['report.low', 'report.high'] },
  { id: 'drop', figures: ['report.temperatureDrop'] },
  { id: 'return', figures: ['entering.dryBulb'] },
  { id: 'returnHumidity', figures: ['entering.relativeHumidity', 'entering.wetBulb'] },
  { id: 'supply', figures: ['leaving.dryBulb'] },
  { id: 'supplyHumidity', figures: ['leaving.relativeHumidity', 'leaving.wetBulb'] },
  { id: 'airflow', figures: ['airflow.volumeFlow'], choice: 'report.airflowBy' },
  { id: 'static', figures: ['report.static'] },
  { id: 'outdoors', figures: ['outdoorDryBulb'] },
  { id: 'compared', figures: [], choice: 'report.compared' },
] as const satisfies readonly ReportLine[];

export type ReportLineId = (typeof reportLines)[number]['id'];
