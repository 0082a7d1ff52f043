/** What the figures of a report show, under the codes of the findings. Amounts come as text, in the order of the calculation. */
import type { Missing, Question } from '../../job/readReport/questions.ts';

type Say = (...amounts: readonly string[]) => string;

export const findingWords: Readonly<Record<string, Say>> = {
  worksOut: (total, low, high) =>
    `Both airs and the airflow come to ${total}; with ordinary instruments, and by what is said of the airflow, between ${low} and ${high}, nine chances in ten at each end.`,
  agrees: (said, low, high) => `Its own ${said} fits that: between ${low} and ${high}.`,
  disagrees: (said, low, high) =>
    `It says ${said}, and its own readings come to something between ${low} and ${high}. One of them is of another moment, another airflow or another place.`,
  noExpectation: () =>
    'A capacity alone does not say whether it is enough: that takes what the same system should make at that day’s temperatures, from its maker’s table.',
  ofNameplate: (share) =>
    `${share} is a share of the size on the nameplate. That size is for a test in a laboratory; on another day less, or more, is right. The comparison that tells is with what it should make that day.`,
  shareDiffers: (said, worked) => `It says ${said}, and its two capacities come to ${worked}.`,
  shareIs: (share) => `Its two capacities come to ${share} of what it should make.`,
  higherThanItCanMake: (share) =>
    `${share} is more than a system can make. The airflow, the place of the supply probe, or the row of the table come first.`,
  allAbove: (low, high, line) =>
    `Between ${low} and ${high}: all of it at ${line} or above, the line that is usual. By these figures it makes what it should.`,
  allBelow: (low, high, line) =>
    `Between ${low} and ${high}: all of it below ${line}, the line that is usual. By these figures it makes less than it should; the measurement is checked first.`,
  lineInside: (low, high, line) =>
    `Between ${low} and ${high}: the usual line, ${line}, lies inside. These readings cannot tell, and that is not a fail.`,
  noRange: (share) =>
    `${share} without a range is half of an answer: with ordinary instruments a good system and a short one can show the same figure.`,
  dropDiffers: (said, worked) => `It says a drop of ${said}, and its two temperatures are ${worked} apart.`,
  dropUsual: (drop, low, high) => `A drop of ${drop} is usual (${low} to ${high}).`,
  dropLow: (drop, low, high) =>
    `A drop of ${drop} is less than usual (${low} to ${high}): much airflow, damp air or little cooling, and it does not say which.`,
  dropHigh: (drop, low, high) =>
    `A drop of ${drop} is more than usual (${low} to ${high}): little airflow or dry air can do it, and it is no sign of much cooling.`,
  dropAlone: () =>
    'A temperature drop alone says nothing about capacity: with half the air it grows, while the cooling shrinks; and in damp air much of the work goes into drying, which no thermometer sees.',
  noHumidity: () => 'Without both humidities the drying cannot be seen, and so not the whole of the work either.',
  supplyDry: (humidity, low, high) =>
    `${humidity} is dry for air that comes off a wet coil (${low} to ${high}): warm air got in before the probe, the coil was dry, or the probe was off.`,
  supplyWet: (humidity, low, high) => `${humidity} is what a wetted probe reads (usual ${low} to ${high}).`,
  airflowUsual: (each, low, high) => `${each} is usual (${low} to ${high}).`,
  airflowLow: (each, low, high) =>
    `${each} is little (usual ${low} to ${high}): filter, coil, ducts or the blower’s speed, or a wrong figure. The capacity hangs on it.`,
  airflowHigh: (each, low, high) => `${each} is much (usual ${low} to ${high}): a wrong figure, or too fast a blower.`,
  airflowByRule: () =>
    'An airflow that was taken for granted makes the capacity a guess of the same size: nobody measured half of it.',
  airflowUnsaid: () =>
    'How the airflow was found is not said, and most of the doubt in a capacity is doubt about the airflow.',
  staticBelow: (pressure, most) => `A static pressure of ${pressure} is below ${most}, from where blowers suffer.`,
  staticHigh: (pressure, most) =>
    `A static pressure of ${pressure} is high: from ${most} on it can cost much fan power and an early failure.`,
  staticAlone: () =>
    'Static pressure is no airflow: a closed damper raises it and so does a fast blower. It takes the blower’s table to make one of the other.',
  notCompared: () =>
    'Nobody says that the two probes were compared. What they differ by goes straight into the result, until a check side by side takes it out.',
  nameplateAlone: (size) => `${size} is what the system is called, and no measurement.`,
};

/** In the order of the page. */
export const findingHeads = {
  shows: 'What these figures show',
  odd: 'What does not fit, or is seldom so',
  cannot: 'What they cannot show',
} as const;

export const readReportAnswer = {
  nothing: 'Nothing typed yet. Two air temperatures, or a capacity and what it should be, are a good beginning.',
  noneShown: 'Nothing yet: single figures that nothing here can be made of.',
  always:
    'No such report proves the refrigerant charge, the ducts beyond the probes, the right size, even rooms, or another day.',
  missing: 'What is missing',
  missingSay: 'Of what is not on yours, these are missed most:',
  questions: 'Three questions to ask',
} as const;

export const missingWords: Readonly<Record<Missing, string>> = {
  expected: 'what it should make that day, from the maker’s table',
  range: 'how sure the result is',
  airflow: 'the airflow: without it nothing says how much cooling there is',
  returnHumidity: 'the humidity of the return air',
  supplyHumidity: 'the humidity of the supply air',
  capacity: 'the cooling that was measured',
  outdoors: 'the temperature outdoors: what it should make hangs on it',
  compared: 'whether the probes were compared',
  static: 'the static pressure, which shows whether the ducts choke the air',
};

export const questionWords: Readonly<Record<Question, string>> = {
  disagrees: 'Two of the figures do not go together. Which of them was read, and when?',
  expected: 'What should this system make at that day’s temperatures, by its maker’s table, and may I see the rows?',
  tooHigh: 'The result is more than the system can make. Which reading would you check first?',
  airflow: 'How was the airflow found, and how sure is it?',
  range: 'How sure is the result: between which two figures does it lie?',
  humidity: 'What were the humidities of the return and the supply air?',
  probes: 'Were the two probes checked side by side that day?',
  static: 'What raises the static pressure: filter, coil or ducts, and what would bring it down?',
  below: 'Which measurement did you check first, and where do you think the cooling is lost?',
  table: 'Which rows of the maker’s table were used, and may I see them?',
  steady: 'How long had it run at full speed before it was read?',
  again: 'If it is measured again, will it be with the same instruments and in the same places?',
};
