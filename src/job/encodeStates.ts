/**
 * The air chart as the query of a link that a person can read and write:
 * `?v=1&r=75F,50rh&s=56F,88rh&a=95F,75Fwb,Outdoor+air&p1=mixing,a,r,,,400cfm,800cfm&z=5000ft`.
 */
import { chosen } from './choices.ts';
import { readEntered } from './entered.ts';
import { linkVersion, placeCodes, pointCode, writeFigure, writeHumidity } from './linkFigures.ts';
import { type Process, processesOf } from './processes.ts';
import type { Read } from './read.ts';
import { type Measured, meanReading, type Place } from './readings.ts';
import { namedStates } from './states.ts';
import type { Job, System, UnitKey } from './types.ts';
import { fromSi } from './units.ts';

/** A chart as a link carries it. */
export interface LinkedChart {
  readonly job: Job;
  readonly system: System;
  /** The families of lines that are on; `null` where it says nothing of them. */
  readonly families: readonly string[] | null;
}

/** The points that can be read, their processes, and the height. Figures that cannot be read are left out. */
export function encodeStates({ job, system, families }: LinkedChart): string {
  const parts: (readonly [key: string, text: string | null])[] = [
    ['v', linkVersion],
    ['u', system === 'si' ? 'si' : null],
    ['i', job.invented ? '1' : null],
    ...placeCodes.map(([code, place]) => [code, placeText(job, place)] as const),
    ...namedStates(job).map(({ key, name, dryBulb, measure, humidity }) => {
      const air = [writeFigure(dryBulb.read), measure && writeHumidity(measure, humidity.read)];
      return [key, air.includes(null) ? null : [...air, ...(name === '' ? [] : [name])].join(',')] as const;
    }),
    ...processesOf(job).map((process) => [process.key, processText(process)] as const),
    ['z', writeFigure(readEntered(job, 'altitude'))],
    ['p', writeFigure(readEntered(job, 'barometer'))],
    ['on', families?.join(',') ?? null],
  ];
  return `?${parts.flatMap(([key, text]) => (text === null ? [] : [`${key}=${encoded(text)}`])).join('&')}`;
}

/** A query may hold commas as they stand, and reads better so. */
const encoded = (text: string) => encodeURIComponent(text).replace(/%20/g, '+').replace(/%2C/g, ',');

/** The mean of what was read at a place, in the unit of its field. */
function placeText(job: Job, place: Place): string | null {
  const measure = chosen(job, 'humidityAs') ?? 'relativeHumidity';
  const mean = meanReading(job, place);
  const asRead = (what: Measured): Read => {
    const si = mean[what];
    if (si === null) return { state: 'empty' };
    const field = readEntered(job, `${place}.${what}`);
    const known: UnitKey = what === 'relativeHumidity' ? 'percent' : 'degF';
    const unit = field.state === 'read' ? field.unit : known;
    const number = field.state === 'read' && field.si === si ? field.number : fromSi(si, unit);
    return { state: 'read', si, number, unit, plain: true, usual: true };
  };
  const air = [writeFigure(asRead('dryBulb')), writeHumidity(measure, asRead(measure))];
  return air.includes(null) ? null : air.join(',');
}

function processText({ kind, from, with: other, to, endDryBulb, airflow, secondAirflow }: Process): string {
  const cells = [endDryBulb, airflow, secondAirflow].map((cell) => writeFigure(cell.read) ?? '');
  return [kind, pointCode(from), pointCode(other), pointCode(to), ...cells].join(',').replace(/,+$/, '');
}
