/**
 * What is said of a way of finding the airflow, under the code of the remark; its amounts come as text, in the order in which
 * `calc` gives them. And what is said where figures cannot be used together.
 */
import type { Problem } from '../../calc/types.ts';

type Say = (...amounts: readonly string[]) => string;

export const airflowRemarks: Readonly<Record<string, Say>> = {
  readoutIsSetting: () =>
    'This control only asks for the flow: the figure is a setting, and no evidence that the air moves. Find it another way as well.',
  readoutMayBeSetting: () =>
    'If the control only asks for this flow, it is a setting and no evidence. The installation guide says whether it senses.',
  airflowWayUnsure: (price) =>
    `Nobody said where this flow holds and how it counts the air. The middle is taken; knowing it would be worth ${price} either way.`,
  highExternalStatic: (pressure, limit) =>
    `${pressure} is high: at ${limit} and more a blower draws much power and does not last. Look at the filter, the coil and shut registers first.`,
  fanHoldsAirflow: (low, high) =>
    `This column hardly falls: a motor that holds its airflow. Many do from about ${low} to ${high} (common practice, no source). The pressure then says little, the setting of the motor much.`,
  fanSeemsToHold: (low, high) =>
    `You say fixed speeds, and this column hardly falls between ${low} and ${high}, as motors that hold their airflow do. Look at the motor.`,
  fanDoesNotHold: (low, high) =>
    `You say that it holds its airflow, and this column falls between ${low} and ${high}, as fixed speeds do. Look at the motor.`,
  pastPlateau: (pressure, limit) =>
    `${pressure} is past what such motors usually overcome (${limit}): the airflow falls there, whatever was set.`,
  motorAtAltitude: (band) =>
    `At this height a motor that holds its airflow may hold the volume or the mass. The middle is taken, ${band} either way.`,
  traverseUneven: (share, wanted) =>
    `Only ${share} of the velocity pressures exceed a tenth of the greatest; a good section has ${wanted}. Take another section.`,
  pitotTooSlow: (velocity, least) =>
    `${velocity} is slow for a Pitot tube: below ${least} its pressure is lost in the gauge. Use a vane or a hot wire.`,
  traverseStraightUnknown: () =>
    'Straight duct before the section: not said. Too little is taken, which makes the range wider.',
  traverseDisturbed: (have, need) =>
    `${have} diameters of straight duct before the section; ${need} are asked for. The range is wider for it.`,
  traverseNotRepeated: (line, point, change) =>
    `Hole ${line}, point ${point} came out ${change} different when it was read again. Repeat the traverse.`,
  otherSpeed: () =>
    'The blower ran on another speed than in cooling: this is not the airflow that cools, and it does not count together with others.',
  speedUnsure: () =>
    'Nobody knows whether the blower ran on its cooling speed: this does not count together with others.',
  heatingSpeed: () =>
    'Hold the blower on its cooling speed: on another one this is not the airflow that cools, and it does not count together with others.',
  probeSeesHeat: () =>
    'A probe in sight of elements or a heat exchanger reads their glow. Move it out of sight, or shield it and read several points.',
  oneProbePoint: (share) =>
    `One point in a supply plenum can be far off (more than twice, in one study of furnaces). The probe alone is worth ${share} here. Read several points.`,
  annualEfficiency: () =>
    'The yearly figure on the label is not the efficiency of this moment. Take what was measured in the flue.',
  guessedEfficiency: () =>
    'A guessed efficiency carries straight into the airflow. Measured in the flue it would be worth more.',
  heatBlowerAssumed: () =>
    'The blower’s own heat is taken as is usual for such a flow. Its measured power would be better.',
  dryCoilAirflow: (share) =>
    `Found over a dry coil. A wet one lets about ${share} less through (common practice, no source).`,
  largeGridCorrection: (factor) =>
    `A correction of ${factor} is large: the plate resists much more than the filter. The answer leans on two pressures.`,
  gridRaisedPressure: (factor) =>
    `The supply pressure rose with the plate in (correction ${factor}): air goes past the plate, or a pressure was read at another point.`,
  pressureNotReached: (share) =>
    `The fan reached ${share} of the pressure. The flow is carried on with the square root, and the range is wider for it.`,
  pressureFarFromReached: (share) =>
    `The fan reached only ${share} of the pressure: far to carry on. Use a stronger fan or another way.`,
  pressureOvershot: (share) =>
    `The fan went to ${share} of the pressure. The flow is carried back with the square root.`,
  hoodBackPressure: (u) =>
    `A plain hood holds some of the air back while it is on the grille; in homes such hoods were out by ${u} and more.`,
  hoodTooSmall: () => 'A hood that does not cover the grille misses what goes past it.',
  leaksAfterGrille: (u) =>
    `Air that is drawn in behind the grille is not seen (taken as ${u}; common practice, no source). The blower moves more than this.`,
  weakestMethod: (u) =>
    `The weakest of all ways: the area factor alone is worth ${u}. Use it to see change, not to judge a system.`,
  areaFactorGuessed: () => 'A guessed area factor makes the figure a guess.',
  oneMethodOnly: () => 'Only one of them is evidence on the cooling speed.',
  airflowsDisagree: (birge) => `They disagree by more than they admit; the range is made ${birge} times as wide.`,
  airflowsScatter: (birge) => `They scatter a little more than they admit; the range is made ${birge} times as wide.`,
};

const problems: Readonly<Record<string, string>> = {
  hole: 'The table prints nothing on one side of this pressure. Nothing is read across a gap.',
  noRows: 'The table needs two rows at least.',
  notAscending: 'Two rows of the table have the same pressure.',
  wrongLength: 'The grid does not fit the section. Choose the number of holes and points again.',
  missing: 'No reading can be used yet.',
  noEvidence: 'None of these is evidence on the cooling speed.',
  outOfRange: 'These figures do not go together. Read them again.',
};

/** Why figures that can be read one by one give no airflow together; the amounts are those of a pressure. */
export function airflowProblems({ code, quantity }: Problem, [value, min, max]: readonly string[]): string {
  if (code === 'outsideTable')
    return `${value} lies outside what this column prints: ${min} to ${max}. Nothing is read beyond a table: look for the wrong column, or read the pressure again.`;
  if (quantity === 'rise.leaving')
    return 'The air hardly gets warmer. A rise of 20\u00a0°F (11\u00a0°C) or more can be read well.';
  return problems[code] ?? problems['outOfRange'] ?? code;
}
