/** Questions about what a system should make: here instead of in the laboratory, and between printed rows. */
import { standardPressure } from '../../../calc/atmosphere.ts';
import { dryAirFlow } from '../../../calc/dryAirFlow.ts';
import { expectedCapacity } from '../../../calc/expectation.ts';
import { ratingTable } from '../../../calc/ratingTable.ts';
import type { RatingTable } from '../../../calc/types.ts';
import { btuPerHour, cubicFootPerMinute, foot, fromFahrenheit, tonOfRefrigeration } from '../../../calc/units.ts';
import { airOf, tell } from './support.ts';
import type { Lesson } from './types.ts';

interface House {
  readonly tons: number;
  /** Certified net capacity, Btu/h. */
  readonly certified: number;
  readonly room: number;
  readonly roomHumidity: number;
  readonly outdoors: number;
  /** Feet. */
  readonly height: number;
  /** Watts inside the rating, and of this house's blower. */
  readonly blowerRated: number;
  readonly blowerHere: number;
}

/** An invented table around its certified figure: outdoors and wet bulb, °F, and the share of the certified figure. */
const printedShares = [
  [85, 59, 431 / 465],
  [85, 63, 462 / 465],
  [85, 67, 492 / 465],
  [95, 59, 408 / 465],
  [95, 63, 437 / 465],
  [95, 67, 1],
] as const;
const hundreds = (btuh: number) => 100 * Math.round(btuh / 100) * btuPerHour;
const flowOf = ({ tons }: House) => tons * 400 * cubicFootPerMinute;

function tableOf(house: House): RatingTable {
  const flow = dryAirFlow({ volumeFlow: flowOf(house), at: 'standard' });
  return ratingTable(
    printedShares.map(([outdoors, wetBulb, share]) => ({
      outdoorDryBulb: fromFahrenheit(outdoors),
      enteringWetBulb: fromFahrenheit(wetBulb),
      dryAirFlow: flow,
      total: hundreds(house.certified * share),
    })),
    { basis: 'net', blowerPower: house.blowerRated },
  );
}

function expectedOf(house: House): number {
  const air = airOf(house.room, house.roomHumidity, standardPressure(house.height * foot));
  return expectedCapacity(
    tableOf(house),
    {
      outdoorDryBulb: fromFahrenheit(house.outdoors),
      enteringWetBulb: air.wetBulb,
      dryAirFlow: dryAirFlow({ volumeFlow: flowOf(house), at: air }),
    },
    { blowerPower: house.blowerHere },
  ).total;
}

/** Which share of its name a system should make in a house, in its weather and at its height. */
export const nominal: Lesson<House> = {
  first: {
    tons: 4,
    certified: 46_500,
    room: 75,
    roomHumidity: 50,
    outdoors: 91,
    height: 1609.344 / foot,
    blowerRated: 560,
    blowerHere: 750,
  },
  draw: (draw) => {
    const tons = draw.step(2, 5, 0.5);
    return {
      tons,
      certified: 100 * Math.round(tons * 120 * draw.step(0.95, 1, 0.01)),
      room: draw.step(74, 78, 1),
      roomHumidity: draw.step(46, 54, 1),
      outdoors: draw.step(86, 95, 1),
      height: draw.one([0, 1200, 3400, 5280]),
      blowerRated: 140 * tons,
      blowerHere: 140 * tons + draw.step(0, 200, 10),
    };
  },
  ask: (house) => ({
    told: [
      tell('tons', 'power', house.tons * tonOfRefrigeration),
      tell('certified', 'power', house.certified * btuPerHour),
      tell('room', 'temperature', fromFahrenheit(house.room)),
      tell('roomHumidity', 'fraction', house.roomHumidity / 100),
      tell('outdoors', 'temperature', fromFahrenheit(house.outdoors)),
      tell('altitude', 'length', house.height * foot),
    ],
    grid: null,
    asTable: false,
    control: { by: 'barEnd', kind: 'fraction', range: [0.5, 1.1], decimals: 0 },
    scale: {
      look: 'bar',
      kind: 'fraction',
      pen: 'should',
      ends: [0, 1.1],
      given: [
        { name: 'nominal', values: [1] },
        { name: 'certifiedShare', values: [(house.certified * btuPerHour) / (house.tons * tonOfRefrigeration)] },
      ],
      top: null,
    },
  }),
  answer: (house) => {
    const expected = expectedOf(house);
    return {
      answer: expected / (house.tons * tonOfRefrigeration),
      marks: [],
      top: null,
      told: [tell('expected', 'power', expected)],
    };
  },
};

interface Corner {
  /** Btu/h: 85 °F outdoors at 62 and 67 °F wet bulb, then 95 °F. */
  readonly printed: readonly [number, number, number, number];
  readonly outdoors: number;
  readonly wetBulb: number;
}

const heads = { outdoors: [85, 95], wetBulbs: [62, 67] } as const;
const netOf = (corner: Corner) => corner.printed.map((btuh) => btuh * btuPerHour);

/** What a table says at conditions that stand between its rows. */
export const betweenRows: Lesson<Corner> = {
  first: { printed: [33_600, 36_900, 31_700, 34_900], outdoors: 91, wetBulb: 64 },
  draw: (draw) => {
    const base = draw.step(2, 5, 0.5) * 12_000 * draw.step(0.94, 1.01, 0.01);
    const figure = (share: number) => 100 * Math.round((base * share) / 100);
    return {
      printed: [figure(0.97), figure(1.055), figure(0.92), figure(1)],
      outdoors: draw.step(86, 94, 1),
      wetBulb: draw.step(62.5, 66.5, 0.5),
    };
  },
  ask: (corner) => {
    const figures = netOf(corner);
    const [low, high] = [Math.min(...figures), Math.max(...figures)];
    return {
      told: [
        tell('outdoors', 'temperature', fromFahrenheit(corner.outdoors)),
        tell('returnWetBulb', 'temperature', fromFahrenheit(corner.wetBulb)),
      ],
      grid: {
        name: 'rating',
        columns: heads.outdoors.map(fromFahrenheit),
        rows: heads.wetBulbs.map((head, row) => ({
          head: fromFahrenheit(head),
          cells: [figures[row] ?? 0, figures[row + 2] ?? 0],
        })),
      },
      asTable: false,
      control: { by: 'number', kind: 'power', range: [0.8 * low, 1.2 * high], decimals: 0 },
      scale: {
        look: 'place',
        kind: 'power',
        pen: 'should',
        ends: [0.97 * low, 1.03 * high],
        given: [{ name: 'printed', values: figures }],
        top: null,
      },
    };
  },
  answer: (corner) => {
    const figures = netOf(corner);
    const table = ratingTable(
      heads.outdoors.flatMap((outdoors, column) =>
        heads.wetBulbs.map((wetBulb, row) => ({
          outdoorDryBulb: fromFahrenheit(outdoors),
          enteringWetBulb: fromFahrenheit(wetBulb),
          total: figures[2 * column + row] ?? 0,
        })),
      ),
      { basis: 'net', blowerPower: 300 },
    );
    const { total } = expectedCapacity(
      table,
      { outdoorDryBulb: fromFahrenheit(corner.outdoors), enteringWetBulb: fromFahrenheit(corner.wetBulb) },
      { blowerPower: 300 },
    );
    return { answer: total, marks: [], top: null, told: [tell('certified', 'power', figures[3] ?? 0)] };
  },
};
