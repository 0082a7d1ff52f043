/** Questions that ask first: air and a process drawn by a seed, and what comes of it. Pure; nothing here is shown before it is asked for. */
import { coilLoad } from '~/calc/coilLoad.ts';
import { bypassAtFlow, leavingAir } from '~/calc/coilModel.ts';
import { saturationHumidityRatio } from '~/calc/humidityRatio.ts';
import { mix } from '~/calc/mix.ts';
import { moistAir } from '~/calc/moistAir.ts';
import type { MoistAir } from '~/calc/types.ts';
import type { System } from '~/job/types.ts';
import { toSi } from '~/job/units.ts';

export const kinds = ['wetBulb', 'mixing', 'heating', 'lessAir'] as const;
export type QuestionKind = (typeof kinds)[number];

export interface Question {
  readonly kind: QuestionKind;
  readonly seed: number;
  /** What is on the chart while it is asked. */
  readonly given: readonly MoistAir[];
  /** Shares of the streams, or what is left of the airflow, in percent. */
  readonly share: number;
  /** The temperature that heating ends at, °C. */
  readonly end: number;
  /** Where the answer lies; of a question for one figure, the air that has it. */
  readonly answer: MoistAir;
}

/** Which figure a question asks for; `null` where it asks for a place. */
export const figureOf = {
  wetBulb: 'wetBulb',
  heating: 'relativeHumidity',
  mixing: null,
  lessAir: null,
} as const satisfies Record<QuestionKind, 'wetBulb' | 'relativeHumidity' | null>;

/** Round numbers of each system, the cooler first. */
const menus = {
  ip: {
    unit: 'degF',
    room: [70, 88, 2],
    cold: [30, 44, 2],
    warm: [66, 76, 2],
    outdoors: [86, 98, 2],
    lived: [75, 80, 1],
    supply: [54, 56, 1],
  },
  si: {
    unit: 'degC',
    room: [21, 31, 1],
    cold: [-1, 7, 1],
    warm: [19, 24, 1],
    outdoors: [30, 37, 1],
    lived: [24, 27, 1],
    supply: [12, 13, 1],
  },
} as const;

/** The question of a seed at a pressure. The same seed gives the same question to everyone who uses the same units. */
export function questionOf(seed: number, system: System, pressure: number): Question {
  const random = randomOf(seed);
  const pick = ([low, high, step]: readonly [number, number, number]) =>
    low + step * Math.floor(random() * (Math.floor((high - low) / step) + 1));
  const menu = menus[system];
  const temperature = (name: Exclude<keyof typeof menu, 'unit'>) => toSi(pick(menu[name]), menu.unit);
  const air = (dryBulb: number, humidity: readonly [number, number, number]) =>
    moistAir({ dryBulb, relativeHumidity: pick(humidity) / 100, pressure });
  const kind = kinds[(((seed - 1) % kinds.length) + kinds.length) % kinds.length] ?? 'wetBulb';
  const question = (given: readonly MoistAir[], answer: MoistAir, share = 0, end = 0): Question => ({
    kind,
    seed,
    given,
    share,
    end,
    answer,
  });

  if (kind === 'wetBulb') {
    const room = air(temperature('room'), [20, 70, 10]);
    return question([room], room);
  }
  if (kind === 'heating') {
    const cold = air(temperature('cold'), [60, 90, 10]);
    const end = temperature('warm');
    return question([cold], moistAir({ dryBulb: end, humidityRatio: cold.humidityRatio, pressure }), 0, end);
  }
  if (kind === 'mixing') {
    const outdoors = air(temperature('outdoors'), [40, 60, 10]);
    const room = air(temperature('warm'), [40, 50, 10]);
    const share = pick([20, 40, 10]);
    const mixed = mix({ air: outdoors, dryAirFlow: share }, { air: room, dryAirFlow: 100 - share });
    return question([outdoors, room], mixed.air, share);
  }
  const room = air(temperature('lived'), [50, 50, 10]);
  const supply = air(temperature('supply'), [86, 92, 2]);
  const share = pick([60, 80, 10]);
  return question([room, supply], slower(room, supply, share / 100), share);
}

/**
 * The air behind the same coil at less airflow: its surface bypasses less, and the capacity falls a little (bypass factor
 * with the flow as in EnergyPlus, capacity 0.8 + 0.2 of the flow ratio). Air that would be fog is saturated.
 */
function slower(entering: MoistAir, leaving: MoistAir, ratio: number): MoistAir {
  const { total, apparatus } = coilLoad({ entering, leaving, dryAirFlow: 1 });
  const less = { entering, dryAirFlow: ratio, total: total * (0.8 + 0.2 * ratio) };
  const found = leavingAir(less, bypassAtFlow(apparatus?.bypassFactor ?? 0, ratio));
  const { dryBulb, humidityRatio } = found ?? leaving;
  const most = saturationHumidityRatio(dryBulb, entering.pressure);
  return moistAir({ dryBulb, humidityRatio: Math.min(most, humidityRatio), pressure: entering.pressure });
}

/** Evenly spread numbers from 0 to 1 out of a seed (mulberry32). */
function randomOf(seed: number): () => number {
  let state = Math.imul(seed, 0x9e3779b1);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
