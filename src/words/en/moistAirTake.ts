/** Words of what can be taken away from the air chart, and of what is brought to it. */
import type { BadCode } from '../../job/read.ts';

export const take = {
  svg: 'Save the picture (SVG)',
  csv: 'Save the table (CSV)',
  linkField: 'Link to these points',
  linkTooLong: 'So many points and names make a link that some programs cut short. Send the table instead.',
  linkLess: 'Figures that cannot be read are not in it.',
  paste: 'Paste a table of states',
  pasteHint: 'A row a state: temperature and humidity, a name before or behind them; or with a row of heads.',
  pasteKey: 'Put these in place of the states',
  pasted: (count: number) => `${count === 1 ? 'One state is' : `${count} states are`} on the chart.`,
  leftOut: (count: number) =>
    ` ${count === 1 ? 'One row was' : `${count} rows were`} left out: return, supply and ends of processes are worked out here.`,
  file: 'air-chart',
} as const;

const columns: Readonly<Record<string, string>> = {
  dryBulb: 'temperature',
  relativeHumidity: 'humidity',
  wetBulb: 'wet bulb',
  dewPoint: 'dew point',
  humidityRatio: 'humidity ratio',
};

const stays = 'The chart stays as it was.';
const cells: Readonly<Record<BadCode | 'missing' | 'cannotBe', (text: string) => string>> = {
  notANumber: (text) => `“${text}” is not a number`,
  wrongUnit: (text) => `“${text}” has a unit that does not fit`,
  twoNumbers: (text) => `“${text}” has more than one number`,
  below: (text) => `${text} is below what can be`,
  above: (text) => `${text} is beyond what can be`,
  needsTotal: (text) => `“${text}” is not a number`,
  missing: () => 'there is no figure',
  cannotBe: (text) => `“${text}” is more water than air can hold, or less than none`,
};

/** Why a pasted table was not taken. */
export const pasteProblem = {
  empty: `There is no state in it. ${stays}`,
  tooLong: `That is longer than a table of eight states can be. ${stays}`,
  noTemperature: `It has no column of temperatures (dry bulb). ${stays}`,
  noHumidity: `It has no column of humidities. ${stays}`,
  tooMany: (count: number, room: number) => `It has ${count} states, and there is room for ${room}. ${stays}`,
  cell: (code: string, line: number, column: string, text: string) =>
    `Line ${line}, ${columns[column] ?? column}: ${cells[code as keyof typeof cells]?.(text) ?? code}. ${stays}`,
} as const;

export const visitor = {
  banner: 'From a link. Look around and move things; nothing of it is kept on this device until you say so.',
  keep: 'Keep these states',
  keepSay: 'As a job of their own. A job that was open here stays on this device.',
} as const;

export const linkProblems = {
  newer: 'This link was made by a newer version of this site. It is not read, and this is your own chart.',
  tooLong: 'This link is longer than one of this site can be. It is not read, and this is your own chart.',
  broken: (part: string) =>
    part === 'v'
      ? 'This link is not one of this site. It is not read, and this is your own chart.'
      : `This link is broken at “${part}=”. It is not read, and this is your own chart.`,
} as const;
