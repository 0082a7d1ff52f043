import { airflowFromTraverse, type TraverseFound } from '../../calc/airflow/traverse.ts';
import type { Again, Straight } from '../../calc/airflow/traverseChecks.ts';
import {
  linesFor,
  logLinear,
  logTchebycheff,
  pointsFor,
  type Section,
  type TraversePoints,
  traversePoints,
} from '../../calc/airflow/traversePoints.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Outcome, Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { gridValue } from './grid.ts';
import { allOf, optional } from './needs.ts';
import { airflowTables } from './tables.ts';

/** The duct's section with the counts that its size asks for, unless others were chosen that the rule has. */
function sectionOf(job: Job): Outcome<Section> {
  const lines = Number(chosen(job, 'traverse.lines'));
  const points = Number(chosen(job, 'traverse.points'));
  if (chosen(job, 'traverse.shape') === 'round') {
    const fields = allOf(job, 'traverse.diameter');
    if (!fields.ok) return fields;
    const diameter = fields.value['traverse.diameter'];
    const across = lines === 3 ? 3 : 2;
    return {
      ok: true,
      value: { shape: 'round', diameter, lines: across, points: has(logLinear, points) ?? pointsFor(diameter) },
    };
  }
  const fields = allOf(job, 'traverse.width', 'traverse.height');
  if (!fields.ok) return fields;
  const width = fields.value['traverse.width'];
  const height = fields.value['traverse.height'];
  return {
    ok: true,
    value: {
      shape: 'rectangular',
      width,
      height,
      lines: has(logTchebycheff, lines) ?? linesFor(width),
      points: has(logTchebycheff, points) ?? linesFor(height),
    },
  };
}

function has<Count extends number>(rule: Readonly<Record<Count, unknown>>, count: number): Count | null {
  return Object.hasOwn(rule, count) ? (count as Count) : null;
}

/** Where to read, once the section is known. */
export function pointsOf(job: Job): Outcome<TraversePoints> {
  const section = sectionOf(job);
  return section.ok
    ? attempt(
        () => traversePoints(section.value),
        fieldsOf({ width: 'traverse.width', height: 'traverse.height', diameter: 'traverse.diameter' }),
      )
    : section;
}

type TraverseTable = 'traverse.pressures' | 'traverse.velocities';

/** The grid that the instrument's readings stand in: pressures of a Pitot tube, else velocities. */
export function traverseTable(job: Job): TraverseTable {
  return chosen(job, 'traverse.instrument') === 'pitot' ? 'traverse.pressures' : 'traverse.velocities';
}

/** Airflow from a traverse of the duct. */
export function fromTraverse(job: Job, t?: Trace): Found<TraverseFound> {
  const section = sectionOf(job);
  const points = pointsOf(job);
  if (!section.ok) return section;
  if (!points.ok) return points;
  const key = traverseTable(job);
  const readings = points.value.lines.map((line, row) =>
    line.points.map((_, point) => gridValue(job, key, row, airflowTables[key][point] ?? '')),
  );
  const straight = straightOf(job);
  const lacks = readings.flat().every((reading) => reading === null) ? [key] : [];
  if (!straight.ok) return { ...straight, waiting: [...lacks, ...straight.waiting] };
  if (lacks.length > 0) return { ok: false, waiting: lacks, problem: null };
  return attempt(
    () =>
      airflowFromTraverse(
        {
          section: section.value,
          instrument: chosen(job, 'traverse.instrument') ?? 'pitot',
          readings,
          air: airHere(job, chosen(job, 'traverse.place') ?? 'entering').air,
          straight: straight.value,
          again: againOf(job, key, points.value),
          speed: chosen(job, 'traverse.speed'),
        },
        t,
      ),
    fieldsOf({ readings: key }),
  );
}

function straightOf(job: Job): Outcome<Straight | null> {
  const length = optional(job, 'traverse.straight');
  if (!length.ok) return length;
  if (length.value === null) return { ok: true, value: null };
  const after = chosen(job, 'traverse.behind') === 'fan' ? 'fan' : 'other';
  return { ok: true, value: { length: length.value, after } };
}

/** The point that is read once more at the end: the middle one, where the air is fastest and steadiest. */
export function againPoint(points: number): number {
  return Math.floor((points - 1) / 2);
}

/** What those points read the second time; a hole that nobody went back to is left out. */
function againOf(job: Job, key: TraverseTable, { lines }: TraversePoints): readonly Again[] {
  return lines.flatMap(({ points }, line) => {
    const reading = gridValue(job, key, line, 'again');
    return reading === null ? [] : [{ line, point: againPoint(points.length), reading }];
  });
}
