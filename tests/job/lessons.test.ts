/** Questions of the lessons: made from a number, with figures that could be, and answers that other ways of working agree with. */
import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, test } from 'vitest';
import { lessonQuestion } from '../../src/job/classroom/lessons/index.ts';
import { type LessonKey, lessonKeys, type TellName } from '../../src/job/classroom/lessons/types.ts';
import { quantityOf } from '../../src/job/quantities.ts';
import type { QuantityKey } from '../../src/job/types.ts';

const number = fc.integer({ min: 1, max: 99_999 });
const runs = { numRuns: 15 };
beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

/** The quantities of a job whose usual ranges hold what a class is told. */
const quantities: Readonly<Partial<Record<TellName, QuantityKey>>> = {
  room: 'entering.dryBulb',
  roomHumidity: 'entering.relativeHumidity',
  supply: 'leaving.dryBulb',
  supplyHumidityTold: 'leaving.relativeHumidity',
  airflow: 'airflow.volumeFlow',
  outdoors: 'outdoorDryBulb',
};

async function told(of: LessonKey, at: number) {
  const question = await lessonQuestion(of, at);
  const value = (name: TellName) =>
    [...question.asked.told, ...question.answered.told].find((one) => one.name === name)?.value ?? Number.NaN;
  return { ...question, value };
}

describe.each(lessonKeys)('a question of %s', (of) => {
  test('is the same for everyone who has its number, and the next one has other figures', async () => {
    expect(await lessonQuestion(of, 7)).toEqual(await lessonQuestion(of, 7));
    for (let at = 1; at < 25; at++)
      expect((await lessonQuestion(of, at + 1)).asked).not.toEqual((await lessonQuestion(of, at)).asked);
  });

  test('is told in usual figures, and its answer can be said and drawn', async () => {
    await fc.assert(
      fc.asyncProperty(number, async (at) => {
        const { asked, answered } = await lessonQuestion(of, at);
        for (const { name, value } of asked.told) {
          expect(Number.isFinite(value), name).toBe(true);
          const key = quantities[name];
          if (!key) continue;
          const [low, high] = quantityOf(key).usual;
          expect(value, name).toBeGreaterThanOrEqual(low - 1e-9);
          expect(value, name).toBeLessThanOrEqual(high + 1e-9);
        }
        const { control, scale } = asked;
        const [low, high] = control.by === 'choice' ? [0, control.options.length - 1] : control.range;
        expect(answered.answer).toBeGreaterThanOrEqual(low);
        expect(answered.answer).toBeLessThanOrEqual(high);
        const marks = [...scale.given, ...answered.marks].flatMap(({ values }) => values);
        for (const value of [...marks, answered.top ?? scale.ends[0]]) {
          expect(value).toBeGreaterThanOrEqual(scale.ends[0]);
          expect(value).toBeLessThanOrEqual(scale.ends[1]);
        }
      }),
      runs,
    );
  });
});

/** Enthalpy and humidity ratio of moist air by another library, which works without the enhancement factor. */
function theirs(dryBulb: number, relativeHumidity: number, pressure = 101_325) {
  const humidityRatio = psychrolib.GetHumRatioFromRelHum(dryBulb, relativeHumidity, pressure);
  return {
    humidityRatio,
    enthalpy: psychrolib.GetMoistAirEnthalpy(dryBulb, humidityRatio),
    volume: psychrolib.GetMoistAirVolume(dryBulb, humidityRatio, pressure),
  };
}

/** Total capacity, W, and its latent part, by that library. */
function load(value: (name: TellName) => number, pressure?: number) {
  const entering = theirs(value('room'), value('roomHumidity'), pressure);
  const leaving = theirs(value('supply'), value('supplyHumidityTold'), pressure);
  const flow = value('airflow') / entering.volume;
  const drop = entering.enthalpy - leaving.enthalpy;
  const heat = 1006 + 1860 * leaving.humidityRatio;
  return { total: flow * drop, latent: flow * (drop - heat * (value('room') - value('supply'))), flow };
}

/** Without the enhancement factor humidity is up to 0.6 % lower: half a point in a share of latent or of height. */
const halfPoint = 0.005;

describe('answers, worked out by another library and by hand', () => {
  test.each([1, 2, 3, 4])('what dries, question %i', async (at) => {
    const { answered, value } = await told('drying', at);
    const { total, latent } = load(value);
    expect(Math.abs(answered.answer - latent / total)).toBeLessThan(halfPoint);
  });

  test.each([1, 2, 3, 4])('what height takes, question %i', async (at) => {
    const { answered, value } = await told('lessAir', at);
    const pressure = psychrolib.GetStandardAtmPressure(value('altitude'));
    expect(Math.abs(answered.answer - (1 - load(value, pressure).total / load(value).total))).toBeLessThan(halfPoint);
  });

  test.each([1, 2, 3, 4])('where a glass mists, question %i', async (at) => {
    const { answered, value } = await told('oneAir', at);
    const found = psychrolib.GetTDewPointFromHumRatio(
      value('room'),
      psychrolib.GetHumRatioFromRelHum(value('room'), value('roomHumidity'), 101_325),
      101_325,
    );
    expect(Math.abs(answered.answer - found)).toBeLessThan(0.01);
  });

  test.each([1, 2, 3, 4])('what the blower puts in, question %i', async (at) => {
    const { answered, value } = await told('blower', at);
    const { total, flow } = load(value);
    expect(answered.answer / (value('blowerPower') / total)).toBeCloseTo(1, 2);
    expect(value('warming') / (value('blowerPower') / (1020 * flow))).toBeCloseTo(1, 1);
  });

  test.each([1, 2, 3, 4])('between the rows, question %i', async (at) => {
    const { asked, answered, value } = await told('betweenRows', at);
    const { columns, rows } = asked.grid!;
    const part = (x: number, [low, high]: readonly number[]) => (x - low!) / (high! - low!);
    const across = part(value('outdoors'), columns);
    const down = part(
      value('returnWetBulb'),
      rows.map(({ head }) => head),
    );
    const [first, second] = rows.map(({ cells: [low, high] }) => low! + across * (high! - low!));
    expect(answered.answer).toBeCloseTo(first! + down * (second! - first!), 6);
  });

  /** 1.28155: the 90 % point of the normal distribution, as printed in tables of it. Limits are rectangular: half a width over the root of three. */
  test.each([1, 2, 3, 4])('how far down a range reaches, question %i', async (at) => {
    const { answered, value } = await told('twoProbes', at);
    const base = load(value).total;
    const moved = (name: TellName, by: number) => load((one) => value(one) + (one === name ? by : 0)).total / base - 1;
    const small = 1e-3;
    const effects = [
      (moved('room', small) / small) * value('temperatureLimit'),
      (moved('supply', small) / small) * value('temperatureLimit'),
      (moved('roomHumidity', small) / small) * value('humidityLimit'),
      (moved('supplyHumidityTold', small) / small) * value('humidityLimit'),
      value('airflowLimit'),
    ];
    const u = Math.hypot(...effects) / Math.sqrt(3);
    expect(value('uncertainty') / u).toBeCloseTo(1, 1);
    const low = value('share') * (1 - 1.28155 * u);
    expect(answered.answer).toBeGreaterThan(low - 0.012);
    expect(answered.answer).toBeLessThan(low + 0.003);
  });

  /**
   * The lesson's own house by hand: 91 °F of 85 to 95, its wet bulb between 59 and 67 °F, the published flow curve 0.8 + 0.2·f
   * on the dry air that a mile leaves, and 190 W of blower more than the rating has.
   */
  test('what a system makes of its name, by hand', async () => {
    const { answered } = await told('nominal', 1);
    const pressure = psychrolib.GetStandardAtmPressure(1609.344);
    const wetBulb = psychrolib.GetTWetBulbFromRelHum((75 - 32) / 1.8, 0.5, pressure) * 1.8 + 32;
    const column = ([at59, at63, at67]: readonly [number, number, number]) =>
      wetBulb < 63 ? at59 + ((wetBulb - 59) / 4) * (at63 - at59) : at63 + ((wetBulb - 63) / 4) * (at67 - at63);
    const cool = column([43_100, 46_200, 49_200]);
    const net = cool + 0.6 * (column([40_800, 43_700, 46_500]) - cool);
    const gross = net + 560 * 3.412142;
    const air = theirs((75 - 32) / 1.8, 0.5, pressure);
    const flowRatio = 1 / (air.volume * 1.2014);
    const expected = gross * (0.8 + 0.2 * flowRatio) - 750 * 3.412142;
    expect(answered.answer).toBeCloseTo(expected / 48_000, 2);
  });

  test('the mistake that is asked for is the one that was made, and may stand under any of the three letters', async () => {
    const places = await Promise.all(
      Array.from({ length: 30 }, async (_, at) => {
        const { asked, answered } = await lessonQuestion('spoilt', at + 1);
        if (asked.control.by !== 'choice') throw new Error('no choice');
        expect(new Set(asked.control.options).size).toBe(3);
        return answered.answer;
      }),
    );
    expect(new Set(places)).toEqual(new Set([0, 1, 2]));
  });
});

test('no answer stands among what is told, for any lesson that asks for a figure', async () => {
  for (const of of lessonKeys) {
    for (let at = 1; at < 10; at++) {
      const { asked, answered } = await lessonQuestion(of, at);
      if (asked.control.by === 'choice') continue;
      const seen = [...asked.told.map(({ value }) => value), ...asked.scale.given.flatMap(({ values }) => values)];
      for (const value of seen) expect(Math.abs(value - answered.answer), of).toBeGreaterThan(1e-6);
    }
  }
});
