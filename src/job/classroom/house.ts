/** An invented house with a sound system in it: what is true, before anybody reads it wrongly. */
import { standardPressure } from '../../calc/atmosphere.ts';
import { coilLoad } from '../../calc/coilLoad.ts';
import { leavingAir } from '../../calc/coilModel.ts';
import { dryAirFlow } from '../../calc/dryAirFlow.ts';
import { expectedCapacity } from '../../calc/expectation.ts';
import { moistAir } from '../../calc/moistAir.ts';
import { ratingTable } from '../../calc/ratingTable.ts';
import { temperatureRise } from '../../calc/temperatureRise.ts';
import type { MoistAir, RatingTable } from '../../calc/types.ts';
import { btuPerHour, cubicFootPerMinute, foot, fromFahrenheit } from '../../calc/units.ts';
import type { Draw } from './draw.ts';
import type { Worked } from './spoiltTypes.ts';

export interface House {
  readonly altitude: number;
  readonly outdoors: number;
  readonly room: MoistAir;
  /** Air that leaves the cabinet, well mixed. */
  readonly supply: MoistAir;
  /** Humidity ratio of the air that reaches the coil: the room's, unless a bypass is open. */
  readonly coilHumidityRatio: number;
  /** Of actual return air, m³/s. */
  readonly volumeFlow: number;
  /** Blower power here, W. */
  readonly blower: number;
  readonly table: RatingTable;
  /** Certified net capacity, W. */
  readonly certified: number;
  /** Power of the outdoor unit by the table at these conditions, W. */
  readonly tablePower: number;
}

interface Way {
  /** Share of what the table says that the machine makes, and share of its airflow that passes. */
  readonly makes: number;
  readonly moves: number;
  readonly altitude: number;
  /** Share of the air at the coil that comes straight from the supply through a bypass. */
  readonly bypassed: number;
}

export const sound: Way = { makes: 1, moves: 1, altitude: 0, bypassed: 0 };

/** Corners of an invented table around the certified capacity: outdoors and wet bulb in °F, and the share of the certified. */
const corners = [
  [85, 62, 0.97],
  [85, 67, 1.055],
  [95, 62, 0.92],
  [95, 67, 1],
] as const;

/** A house from chance, its machine working as `way` says. `null` where no coil could do that. */
export function houseOf(draw: Draw, way: Way): House | null {
  const tons = draw.step(2, 5, 0.5);
  const ratedFlow = tons * draw.step(380, 410, 5) * cubicFootPerMinute;
  const certified = tons * 12_000 * draw.step(0.95, 1, 0.01) * btuPerHour;
  const outdoors = fromFahrenheit(draw.step(87, 94, 1));
  const pressure = standardPressure(way.altitude * foot);
  const room = moistAir({
    dryBulb: fromFahrenheit(draw.step(74, 78, 1)),
    relativeHumidity: draw.step(0.46, 0.54, 0.01),
    pressure,
  });
  const table = ratingTable(
    corners.map(([outdoor, wetBulb, share]) => ({
      outdoorDryBulb: fromFahrenheit(outdoor),
      enteringWetBulb: fromFahrenheit(wetBulb),
      dryAirFlow: dryAirFlow({ volumeFlow: ratedFlow, at: 'standard' }),
      total: share * certified,
    })),
    { basis: 'net', blowerPower: 530 * ratedFlow },
  );
  const volumeFlow = ratedFlow * way.moves * draw.step(0.97, 1.02, 0.01);
  const blower = 700 * volumeFlow;
  const scatter = draw.step(0.96, 1.01, 0.01);
  // What comes through a bypass cools the air that enters: a few rounds find where the two agree.
  let entering = room;
  let supply: MoistAir | null = null;
  for (let round = 0; round < 30; round++) {
    const flow = dryAirFlow({ volumeFlow, at: entering });
    const net = way.makes * scatter * expectedOf({ table, outdoors, blower }, entering, flow);
    supply = supplyOf(entering, flow, net + blower, blower);
    if (supply === null) return null;
    const mixed = (of: 'enthalpy' | 'humidityRatio') => room[of] + way.bypassed * (supply![of] - room[of]);
    entering = moistAir({
      dryBulb: room.dryBulb + way.bypassed * (supply.dryBulb - room.dryBulb),
      humidityRatio: mixed('humidityRatio'),
      pressure,
    });
  }
  const tablePower = (certified / 3.6) * (1 + 0.012 * (outdoors - fromFahrenheit(95)));
  return {
    altitude: way.altitude * foot,
    outdoors,
    room,
    supply: supply!,
    coilHumidityRatio: entering.humidityRatio,
    volumeFlow,
    blower,
    table,
    certified,
    tablePower,
  };
}

function supplyOf(entering: MoistAir, flow: number, gross: number, blower: number): MoistAir | null {
  const leaves = leavingAir({ entering, dryAirFlow: flow, total: gross }, 0.15);
  if (leaves === null) return null;
  const { humidityRatio, dryBulb } = leaves;
  const warmed = dryBulb + temperatureRise(blower, flow, humidityRatio);
  return moistAir({ dryBulb: warmed, humidityRatio, pressure: entering.pressure });
}

/** What the table gives, net, W. */
function expectedOf(of: Pick<House, 'table' | 'outdoors' | 'blower'>, entering: MoistAir, flow: number): number {
  const { pressure, wetBulb, dryBulb } = entering;
  const conditions = {
    outdoorDryBulb: of.outdoors,
    enteringWetBulb: wetBulb,
    enteringDryBulb: dryBulb,
    dryAirFlow: flow,
    beyond: 'extend',
  } as const;
  return expectedCapacity(of.table, conditions, { blowerPower: of.blower, pressure }).total;
}

/** What a tester makes of two airs and an airflow in this house; more may be added to what is expected, W. */
export function workedOut(
  house: House,
  entering: MoistAir,
  leaving: MoistAir,
  volumeFlow: number,
  more = 0,
): { readonly worked: Worked; readonly water: number } {
  const flow = dryAirFlow({ volumeFlow, at: entering });
  const { total, condensate } = coilLoad({ entering, leaving, dryAirFlow: flow });
  const expected = expectedOf(house, entering, flow) + more;
  return { worked: { measured: total, expected, share: total / expected }, water: condensate };
}
