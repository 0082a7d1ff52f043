import { CalcError } from '../errors.ts';
import { amount } from '../trace.ts';
import type { Remark, Trace } from '../types.ts';
import { type Grid, mean, meanOf, missingCause, readCells } from './cells.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, remark } from './found.ts';
import { type AirThere, checkAir, type Gauge, manometer } from './instruments.ts';
import { practice } from './limits.ts';
import { type Again, acceptance, againBy, type Straight, straightDuct } from './traverseChecks.ts';
import { type Section, traversePoints } from './traversePoints.ts';
import { type Anemometer, anemometerCauses, flowThrough, physics, traceFlow, traceVelocity } from './velocity.ts';

export interface Traverse {
  readonly section: Section;
  readonly instrument: Anemometer;
  /** A line for each hole, a reading for each of its points, as `traversePoints` lists them: Pa for a Pitot tube, else m/s. */
  readonly readings: Grid;
  /** The air in the duct there. */
  readonly air: AirThere;
  /** Straight duct before the section; `null`: not known. */
  readonly straight: Straight | null;
  /** Points that were read once more. */
  readonly again?: readonly Again[];
  readonly gauge?: Gauge;
  readonly speed?: BlowerSpeed | undefined;
}

export interface TraverseFound extends AirflowFound {
  /** m², and m/s: of standard air where the instrument shows that. */
  readonly area: number;
  readonly meanVelocity: number;
  /** Velocities, m/s, in the shape of the readings. */
  readonly velocities: Grid;
  /** The profile: mean of each line, and of each depth over all lines, over the mean of all; `null` without a reading. */
  readonly profile: { readonly lines: readonly (number | null)[]; readonly depths: readonly (number | null)[] };
  /** Share of velocity pressures above a tenth of the greatest, and whether that is three quarters of them. */
  readonly acceptance: { readonly share: number; readonly passes: boolean };
}

/** Standard uncertainties, common practice, no source: of a section with straight duct before it, of any other, of the area. */
const section = { straight: 0.03, disturbed: 0.08 } as const;
const area = 0.01;

/**
 * Airflow through a duct from a grid of readings, m³/s: velocities are averaged, never pressures. Pitot and vane give the volume
 * as it moves, a thermal anemometer that of standard air. Bad cells go to `problems`, cells without a reading widen the answer,
 * and either marks it partial. Throws a `CalcError` for a grid of another shape than the points (`wrongLength`), for one
 * without a usable reading, and for a section or an air out of range. ISO 3966, ASHRAE 41.2 and 111 (`traverseRules`).
 */
export function airflowFromTraverse(traverse: Traverse, t?: Trace): TraverseFound {
  const { instrument, readings, air, gauge = manometer, speed } = traverse;
  checkAir(air);
  const points = traversePoints(traverse.section);
  checkShape(
    readings,
    points.lines.map((line) => line.points.length),
  );
  const { range, velocity, standard } = physics[instrument];
  const cells = readCells('readings', readings, range);
  const velocities = cells.good.map((line) => line.map((value) => (value === null ? null : velocity(value, air))));
  const values = velocities.flat().filter((value) => value !== null);
  const meanVelocity = mean(values);
  traceVelocity(instrument, air, cells.values[0] as number, { velocity: meanVelocity, count: values.length }, t);
  traceFlow(standard ? 'V̇₀' : 'V̇', meanVelocity, points.area, t);
  const straight = straightDuct(traverse.straight, points.diameter);
  const causes: readonly Cause[] = [
    { name: 'traverse.section', u: section[straight.enough ? 'straight' : 'disturbed'], basis: 'commonPractice' },
    { name: 'traverse.area', u: area, basis: 'commonPractice' },
    ...anemometerCauses(instrument, gauge, mean(cells.values)),
    ...missingCause('traverse.missing', values, cells.missing),
  ];
  const accepted = acceptance(values);
  const remarks = [
    ...straight.remarks,
    ...remarksOf(instrument, meanVelocity, accepted),
    ...againBy(traverse.again ?? [], cells.good),
  ];
  const partial = cells.missing > 0;
  const { problems } = cells;
  const flow = flowThrough(meanVelocity, points.area, standard, air);
  return {
    ...found({ method: 'traverse', ...flow, causes, remarks, partial, problems, speed }, t),
    area: points.area,
    meanVelocity,
    velocities,
    profile: profileOf(velocities, meanVelocity),
    acceptance: accepted,
  };
}

function checkShape(readings: Grid, counts: readonly number[]): void {
  if (readings.length !== counts.length) {
    throw new CalcError('wrongLength', 'readings', readings.length, counts.length, counts.length);
  }
  readings.forEach(({ length }, i) => {
    const count = counts[i] as number;
    if (length !== count) throw new CalcError('wrongLength', `readings.${i}`, length, count, count);
  });
}

function profileOf(velocities: Grid, meanVelocity: number): TraverseFound['profile'] {
  const share = (values: readonly (number | null)[]) => {
    const average = meanOf(values);
    return average === null ? null : average / meanVelocity;
  };
  const [first] = velocities as readonly [Grid[number]];
  const depths = first.map((_, j) => share(velocities.map((line) => line[j] as number | null)));
  return { lines: velocities.map(share), depths };
}

function remarksOf(
  instrument: Anemometer,
  meanVelocity: number,
  { share, passes }: TraverseFound['acceptance'],
): readonly Remark[] {
  return [
    ...(passes
      ? []
      : [
          remark(
            'traverseUneven',
            'doubt',
            amount('s', 'fraction', share),
            amount('s₀', 'fraction', practice.acceptShare),
          ),
        ]),
    ...(instrument === 'pitot' && meanVelocity < practice.pitotVelocity
      ? [
          remark(
            'pitotTooSlow',
            'doubt',
            amount('w̄', 'velocity', meanVelocity),
            amount('w', 'velocity', practice.pitotVelocity),
          ),
        ]
      : []),
  ];
}
