/** Questions about air itself: where a glass mists, how much of a coil's work dries, what height takes. */
import { standardPressure } from '../../../calc/atmosphere.ts';
import { foot, fromFahrenheit } from '../../../calc/units.ts';
import { drawnReadings } from './drawn.ts';
import { airOf, loadOf, type Readings, tell, toldReadings, usualReadings } from './support.ts';
import type { Lesson } from './types.ts';

const fahrenheit = (low: number, high: number) => [fromFahrenheit(low), fromFahrenheit(high)] as const;

/** At which temperature a glass in a room begins to mist: its dew point. */
export const oneAir: Lesson<Pick<Readings, 'room' | 'roomHumidity'>> = {
  first: { room: 75, roomHumidity: 50 },
  draw: (draw) => ({ room: draw.step(68, 84, 1), roomHumidity: draw.step(30, 65, 1) }),
  ask: ({ room, roomHumidity }) => ({
    told: [tell('room', 'temperature', fromFahrenheit(room)), tell('roomHumidity', 'fraction', roomHumidity / 100)],
    grid: null,
    asTable: false,
    control: { by: 'number', kind: 'temperature', range: fahrenheit(32, 90), decimals: 1 },
    scale: {
      look: 'place',
      kind: 'temperature',
      pen: 'measured',
      ends: fahrenheit(30, 90),
      given: [{ name: 'room', values: [fromFahrenheit(room)] }],
      top: null,
    },
  }),
  answer: ({ room, roomHumidity }) => {
    const air = airOf(room, roomHumidity);
    return {
      answer: air.dewPoint,
      marks: [{ name: 'wetBulb', values: [air.wetBulb] }],
      top: null,
      told: [tell('wetBulb', 'temperature', air.wetBulb)],
    };
  },
};

/** Which share of a coil's work no thermometer sees. */
export const drying: Lesson<Readings> = {
  first: { room: 75, roomHumidity: 55, supply: 57, supplyHumidity: 90, airflow: 1200 },
  draw: drawnReadings,
  ask: (readings) => ({
    told: toldReadings(readings),
    grid: null,
    asTable: false,
    control: { by: 'barEnd', kind: 'fraction', range: [0, 1], decimals: 0 },
    scale: { look: 'parted', kind: 'fraction', pen: 'measured', ends: [0, 1], given: [], top: null },
  }),
  answer: (readings) => {
    const { total, sensible, latent } = loadOf(readings);
    return {
      answer: latent / total,
      marks: [],
      top: null,
      told: [tell('total', 'power', total), tell('sensible', 'power', sensible), tell('latent', 'power', latent)],
    };
  },
};

/** How much less a system makes at a height, with the same readings and the same cubic feet. */
export const lessAir: Lesson<Readings & { readonly height: number }> = {
  first: { ...usualReadings, height: 5280 },
  draw: (draw) => {
    const readings = drawnReadings(draw);
    return readings && { ...readings, height: draw.step(2500, 8000, 500) };
  },
  ask: (of) => ({
    told: [...toldReadings(of), tell('altitude', 'length', of.height * foot)],
    grid: null,
    asTable: false,
    control: { by: 'number', kind: 'fraction', range: [0, 0.6], decimals: 0 },
    scale: {
      look: 'rest',
      kind: 'fraction',
      pen: 'measured',
      ends: [0, 1],
      given: [{ name: 'seaLevel', values: [1] }],
      top: null,
    },
  }),
  answer: (of) => {
    const pressure = standardPressure(of.height * foot);
    const sea = loadOf(of).total;
    const up = loadOf(of, pressure).total;
    return {
      answer: 1 - up / sea,
      marks: [],
      top: null,
      told: [tell('seaLevel', 'power', sea), tell('total', 'power', up)],
    };
  },
};
