/** Why an answer is what it is: fetched with the answer, and not before. */
import type { LessonKey } from '../../job/classroom/lessons/types.ts';
import type { Texts } from './lessonQuestions.ts';

export const lessonWhy: Readonly<Record<Exclude<LessonKey, 'spoilt'>, (text: Texts) => string>> = {
  nominal: (text) =>
    `It should make ${text('expected')}. The name is that of a size. The certificate is of a laboratory whose air is warmer and damper than this room’s, and a wet coil is driven by the wet bulb of what enters it. Weather, height and blower make the rest.`,
  drying: (text) =>
    `The coil made ${text('total')}. Of these ${text('sensible')} lowered the temperature, and ${text('latent')} turned vapour into water, which no thermometer sees.`,
  lessAir: (text) =>
    `${text('seaLevel')} at sea level, ${text('total')} up there. The same volume holds less air. At the same humidity that air holds more water, and so the loss is smaller than that of the air.`,
  twoProbes: (text) =>
    `The range runs up to ${text('high')}, from a standard uncertainty of ${text('uncertainty')} of the capacity. It hangs on the difference of two enthalpies, and what is small against each of them is not small against their difference.`,
  oneAir: (text) =>
    `That is the dew point. It hangs on the water in the air and on nothing else. The wet bulb, ${text('wetBulb')}, lies between it and the thermometer.`,
  betweenRows: (text) =>
    `Part of the way between the columns first, then part of the way between the rows; the other way round it comes to the same. The row that everybody knows, the last one, has ${text('certified')} in it.`,
  blower: (text) =>
    `All of its ${text('blowerPower')} end as heat in the air and warm it by ${text('warming')}. It was in the supply air when that was read: the house gets ${text('total')}, and the coil itself took out that much more.`,
};
