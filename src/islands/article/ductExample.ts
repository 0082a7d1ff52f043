/** An invented blower on one fixed speed and invented ducts, for the article about what changes in them do. */
import { type DuctPart, ductSystem, partlyShut, systemStatic } from '~/calc/airflow/ductSystem.ts';
import { fanFlowAt } from '~/calc/airflow/fanTableRead.ts';
import { attempt } from '~/calc/outcome.ts';
import { cubicFootPerMinute, inchOfWater } from '~/calc/units.ts';

const flows = [1370, 1310, 1240, 1160, 1060, 930, 760];
export const table = {
  statics: flows.map((_, row) => (0.1 + 0.2 * row) * inchOfWater),
  speeds: [{ name: 'cooling', flows: flows.map((flow) => flow * cubicFootPerMinute) }],
};

/** m³/s at which the drops below were measured. */
const flow = 1200 * cubicFootPerMinute;
const drops = { filter: 0.14, supply: 0.26, return: 0.16 } as const;

/** What is changed: how many times as much the filter resists, and which share of the registers is shut. */
export interface Change {
  readonly filter: number;
  readonly shut: number;
}

function partsOf({ filter, shut }: Change): readonly DuctPart[] {
  return [
    { drop: drops.filter * inchOfWater, times: filter },
    { drop: drops.supply * inchOfWater, times: partlyShut(shut) },
    { drop: drops.return * inchOfWater, times: 1 },
  ];
}

/** Where blower and ducts meet before and after a change, or why they do not. */
export const meetingOf = (change: Change) =>
  attempt(() => ductSystem({ table, column: 0, flow, parts: partsOf(change) }));

/** The pressure that the ducts take, Pa, over the flows of the picture, m³/s. */
export function ductCurve(change: Change) {
  const parts = partsOf(change);
  return Array.from({ length: 31 }, (_, step) => {
    const at = (step / 30) * 1450 * cubicFootPerMinute;
    return { flow: at, static: at === 0 ? 0 : systemStatic({ flow, parts }, at) };
  });
}

/** The blower's own curve, as it is printed. */
export const blowerCurve = table.statics.map((at) => ({ flow: fanFlowAt(table, 0, at).flow, static: at }));
