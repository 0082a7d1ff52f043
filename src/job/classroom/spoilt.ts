/** Spoilt tests: in an otherwise good data set one mistake is planted, and the figures show it to who looks. */
import { standardPressureAtSeaLevel } from '../../calc/constants.ts';
import { moistAir } from '../../calc/moistAir.ts';
import type { MoistAir } from '../../calc/types.ts';
import { fromFahrenheit, inchOfWater } from '../../calc/units.ts';
import { type Draw, drawing } from './draw.ts';
import { type House, houseOf, sound, workedOut } from './house.ts';
import { type Fact, type FactName, type Mistake, mistakes, type SpoiltTest, type Worked } from './spoiltTypes.ts';

/** Everything that a tester notes; a mistake changes some of it. */
interface Notes {
  readonly pressureUsed: number;
  readonly returnAir: Pick<MoistAir, 'dryBulb' | 'relativeHumidity'>;
  readonly returnAtUnit: number;
  readonly supplyAir: Pick<MoistAir, 'dryBulb' | 'relativeHumidity'>;
  readonly supplyOthers: readonly [number, number];
  readonly airflowUsed: number;
  readonly staticAtAirflow: number;
  readonly staticCooling: number;
  readonly power: number;
  /** What the row of the table has too much, W. */
  readonly rowTooHigh: number;
}

/** How the machine in the house works, where it is that which is wrong. */
const ways: Readonly<Partial<Record<Mistake, Partial<typeof sound>>>> = {
  lowStage: { makes: 0.69, moves: 0.8 },
  bypassOpen: { bypassed: 0.22 },
  demandedAirflow: { moves: 0.8 },
};

const inches = (of: number) => of * inchOfWater;

function notesOf(house: House, draw: Draw): Notes {
  const { room, supply, volumeFlow } = house;
  const point = () => supply.dryBulb + 0.15 * draw.scatter();
  const cooling = inches(draw.step(0.42, 0.56, 0.02));
  return {
    pressureUsed: room.pressure,
    returnAir: room,
    returnAtUnit: room.dryBulb + 0.1,
    supplyAir: { dryBulb: supply.dryBulb, relativeHumidity: Math.min(0.97, supply.relativeHumidity) },
    supplyOthers: [point(), point()],
    airflowUsed: volumeFlow * (1 + 0.015 * draw.scatter()),
    staticAtAirflow: cooling,
    staticCooling: cooling,
    power: house.tablePower * draw.step(0.97, 1.03, 0.01),
    rowTooHigh: 0,
  };
}

interface Plant {
  readonly change: (notes: Notes, house: House, draw: Draw) => Partial<Notes>;
  readonly giveaways: readonly FactName[];
  /** The test has to be made again: no figure of it can be put right. */
  readonly isLost?: true;
}

const plants: Readonly<Record<Mistake, Plant>> = {
  lowStage: {
    change: ({ power }, _, draw) => ({
      power: power * draw.step(0.58, 0.66, 0.01),
      staticCooling: inches(0.32),
      staticAtAirflow: inches(0.32),
    }),
    giveaways: ['power', 'powerInTable'],
    isLost: true,
  },
  bypassOpen: {
    change: (_, { room, supply }) => ({ returnAtUnit: room.dryBulb + 0.22 * (supply.dryBulb - room.dryBulb) }),
    giveaways: ['returnDryBulb', 'returnAtUnit', 'waterCaught'],
    isLost: true,
  },
  probeSeesCoil: {
    change: ({ supplyAir }, { supply }, draw) => {
      const dryBulb = supplyAir.dryBulb - draw.step(2, 3, 0.1);
      const cold = moistAir({ dryBulb, relativeHumidity: 1, pressure: supply.pressure });
      return { supplyAir: { dryBulb, relativeHumidity: Math.min(0.99, supply.vaporPressure / cold.vaporPressure) } };
    },
    giveaways: ['supplyDryBulb', 'supplySecond', 'supplyThird'],
  },
  wetProbe: {
    change: ({ supplyAir }) => ({ supplyAir: { ...supplyAir, relativeHumidity: 1 } }),
    giveaways: ['supplyHumidity', 'waterCaught'],
  },
  seaLevelPressure: {
    change: () => ({ pressureUsed: standardPressureAtSeaLevel }),
    giveaways: ['altitude', 'pressureUsed'],
  },
  grossRow: {
    change: (_, { blower }) => ({ rowTooHigh: blower }),
    giveaways: ['certified', 'tableAtRating'],
  },
  demandedAirflow: {
    change: ({ airflowUsed }) => ({
      airflowUsed: airflowUsed / 0.8,
      staticCooling: inches(0.92),
      staticAtAirflow: inches(0.92),
    }),
    giveaways: ['airflowUsed', 'airflowFanTable', 'staticCooling'],
  },
  furnaceTap: {
    change: ({ airflowUsed, staticCooling }, _, draw) => {
      const more = draw.step(1.18, 1.26, 0.01);
      return { airflowUsed: airflowUsed * more, staticAtAirflow: staticCooling * more ** 2 };
    },
    giveaways: ['airflowUsed', 'airflowFanTable', 'staticAtAirflow', 'staticCooling'],
  },
};

/** Which facts give a mistake away. */
export const giveawaysOf = (mistake: Mistake): readonly FactName[] => plants[mistake].giveaways;

/** What the notes come to, with the pressure, the probe, the airflow and the row that they name. */
function work(house: House, notes: Notes) {
  const air = (of: Pick<MoistAir, 'dryBulb' | 'relativeHumidity'>) =>
    moistAir({ dryBulb: of.dryBulb, relativeHumidity: of.relativeHumidity, pressure: notes.pressureUsed });
  return workedOut(house, air(notes.returnAir), air(notes.supplyAir), notes.airflowUsed, notes.rowTooHigh);
}

function factsOf(house: House, notes: Notes, water: number): readonly Fact[] {
  const temperature = (name: FactName, value: number): Fact => ({ name, kind: 'temperature', value });
  const pressure = (name: FactName, value: number): Fact => ({ name, kind: 'airPressure', value });
  const power = (name: FactName, value: number): Fact => ({ name, kind: 'power', value });
  return [
    { name: 'altitude', kind: 'length', value: house.altitude },
    { name: 'pressureUsed', kind: 'pressure', value: notes.pressureUsed },
    temperature('outdoors', house.outdoors),
    temperature('returnDryBulb', notes.returnAir.dryBulb),
    { name: 'returnHumidity', kind: 'fraction', value: notes.returnAir.relativeHumidity },
    temperature('returnAtUnit', notes.returnAtUnit),
    temperature('supplyDryBulb', notes.supplyAir.dryBulb),
    temperature('supplySecond', notes.supplyOthers[0]),
    temperature('supplyThird', notes.supplyOthers[1]),
    { name: 'supplyHumidity', kind: 'fraction', value: notes.supplyAir.relativeHumidity },
    { name: 'airflowUsed', kind: 'volumeFlow', value: notes.airflowUsed },
    { name: 'airflowFanTable', kind: 'volumeFlow', value: house.volumeFlow },
    pressure('staticAtAirflow', notes.staticAtAirflow),
    pressure('staticCooling', notes.staticCooling),
    { name: 'waterCaught', kind: 'massFlow', value: water },
    power('power', notes.power),
    power('powerInTable', house.tablePower),
    power('certified', house.certified),
    power('tableAtRating', house.certified + notes.rowTooHigh),
  ];
}

/** Air below which no coil of the kind works: a house that comes to it is drawn again. */
const coldest = fromFahrenheit(44);

/** A test with a mistake in it, or a sound one, from chance. */
export function spoiltTest(mistake: Mistake | null, draw: Draw): SpoiltTest {
  const altitude = mistake === 'seaLevelPressure' ? draw.step(4000, 6000, 200) : draw.one([0, 0, 600, 1400, 5000]);
  const way = { ...sound, ...(mistake === null ? {} : ways[mistake]), altitude };
  let house = houseOf(draw, way);
  while (house === null || house.supply.dryBulb < coldest) house = houseOf(draw, way);
  const truth = notesOf(house, draw);
  const plant = mistake === null ? null : plants[mistake];
  const notes = { ...truth, ...plant?.change(truth, house, draw) };
  const { worked, water } = work(house, notes);
  const without: Worked | null = plant?.isLost ? null : work(house, truth).worked;
  const caught = trueWater(house, truth) * (1 + 0.04 * draw.scatter());
  return { mistake, facts: factsOf(house, notes, caught), worked, water, without, giveaways: plant?.giveaways ?? [] };
}

/** Water that the coil really takes out: with a bypass open it sees air that is drier than the room's. */
function trueWater(house: House, truth: Notes): number {
  const mixed = moistAir({
    dryBulb: house.room.dryBulb,
    humidityRatio: house.coilHumidityRatio,
    pressure: house.room.pressure,
  });
  return workedOut(house, mixed, house.supply, truth.airflowUsed).water;
}

/** The tests of a set: four spoilt ones and a sound one, in an order from chance. */
export function spoiltTestsOf(set: number): readonly SpoiltTest[] {
  const draw = drawing(set * 16 + 9);
  const left: (Mistake | null)[] = [...mistakes];
  const chosen: (Mistake | null)[] = Array.from({ length: 4 }, () => take(left, draw));
  const order = [...chosen, null];
  return Array.from({ length: 5 }, (_, place) => spoiltTest(take(order, draw), drawing(set * 16 + 10 + place)));
}

/** Takes one out of a list, by chance. */
function take<T>(from: T[], draw: Draw): T {
  return from.splice(draw.step(0, from.length - 1, 1), 1)[0] as T;
}
