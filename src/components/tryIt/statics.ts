import { fanFlowAt } from '~/calc/airflow/fanTableRead.ts';
import { inchOfWater } from '~/calc/index.ts';
import { table } from '~/islands/article/ductExample.ts';
import { ahead, dial } from './ahead.ts';

/**
 * The invented blower's table at the static pressures of the supply and the return side, Pa without their signs: the airflow at
 * their sum, m³/s, and the one that the supply side alone would give.
 */
export function atStatics(supply: number, returned: number): readonly [flow: number, supplyOnly: number] {
  return [fanFlowAt(table, 0, supply + returned).flow, fanFlowAt(table, 0, supply).flow];
}

const twentieth = 0.05 * inchOfWater;
export const statics = ahead(
  [
    dial(2 * twentieth, 16 * twentieth, twentieth, 0.3 * inchOfWater),
    dial(twentieth, 10 * twentieth, twentieth, 0.25 * inchOfWater),
  ],
  atStatics,
);

/** The blower's printed column: static pressure, Pa, and flow, m³/s. */
export const blowerColumn: readonly (readonly [pressure: number, flow: number])[] = table.statics.map((pressure) => [
  pressure,
  fanFlowAt(table, 0, pressure).flow,
]);
