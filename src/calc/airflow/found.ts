import type { ErrorSource, Shape } from '../confidenceTypes.ts';
import { type Airflow, dryAirFlow } from '../dryAirFlow.ts';
import type { SourceKey } from '../sources.ts';
import { amount } from '../trace.ts';
import type { Amount, Problem, Remark, Trace } from '../types.ts';
import type { AirflowMethod } from './methods.ts';

/** The speed on which the blower ran while the airflow was measured. */
export type BlowerSpeed = 'cooling' | 'other' | 'unsure';

/** One cause of error of an airflow: `u` is a fraction, `moves.airflow` how much of it reaches the airflow, relative. */
export interface AirflowSource extends ErrorSource<'airflow'> {
  /** What the figure rests on. */
  readonly basis: SourceKey;
}

/** An airflow as one method finds it. */
export interface AirflowFound extends Airflow {
  readonly method: AirflowMethod;
  /** kg/s. */
  readonly dryAirFlow: number;
  /** Combined standard uncertainty, a fraction of the airflow. */
  readonly u: number;
  readonly sources: readonly AirflowSource[];
  /** Whether anything was measured: a flow that the control asks for is a setting. */
  readonly evidence: boolean;
  /** Readings are missing or could not be used: they stand in `problems`, or are not typed yet. */
  readonly partial: boolean;
  readonly speed: BlowerSpeed;
  readonly remarks: readonly Remark[];
  /** Bad cells of a grid, by name ('readings.2.0': line and point from zero); the answer leaves them out. */
  readonly problems: readonly Problem[];
}

/** A cause as a method states it. */
export interface Cause {
  readonly name: string;
  /** Standard uncertainty of the cause, a fraction. */
  readonly u: number;
  readonly basis: SourceKey;
  /** Relative change of the airflow with the cause; 1 when left out. */
  readonly moves?: number;
  readonly shape?: Shape;
}

interface Finding extends Airflow {
  readonly method: AirflowMethod;
  readonly causes: readonly Cause[];
  readonly remarks: readonly Remark[];
  readonly evidence?: boolean;
  readonly partial?: boolean;
  readonly problems?: readonly Problem[];
  readonly speed?: BlowerSpeed | undefined;
}

/** A stated half-width as the standard uncertainty of a rectangle (JCGM 100, 4.3.7). */
export const ofLimit = (limit: number) => limit / Math.sqrt(3);

/** A remark about the airflow. */
export function remark(code: string, weight: Remark['weight'], ...amounts: readonly Amount[]): Remark {
  return { code, weight, about: 'airflow', amounts };
}

/** What every method ends with: the dry-air flow, the causes as error sources and their combined uncertainty. */
export function found(finding: Finding, t?: Trace): AirflowFound {
  const { method, volumeFlow, at, causes, remarks, evidence = true, partial = false, problems = [] } = finding;
  const flow = dryAirFlow({ volumeFlow, at }, t);
  const sources = causes.filter(({ u }) => u > 0).map(toSource);
  const u = combined(sources);
  t?.({
    id: `airflow.${method}.uncertainty`,
    equation: 'u = √(Σ(cᵢ·uᵢ)²)',
    puts: sources.map((source) => amount(`u(${source.name})`, 'fraction', reaching(source))),
    gives: amount('u', 'fraction', u),
    source: 'definition',
  });
  const speed = finding.speed ?? 'cooling';
  const said = [...speedRemarks(method, speed), ...remarks];
  return { method, volumeFlow, at, dryAirFlow: flow, u, sources, evidence, partial, speed, remarks: said, problems };
}

/** Heat has its own word for it. */
function speedRemarks(method: AirflowMethod, speed: BlowerSpeed): readonly Remark[] {
  if (speed === 'cooling' || method === 'temperatureRise') return [];
  return [remark(speed === 'other' ? 'otherSpeed' : 'speedUnsure', 'doubt')];
}

function toSource({ name, u, basis, moves = 1, shape = 'normal' }: Cause): AirflowSource {
  return { name, u, shape, degreesOfFreedom: null, moves: { airflow: moves }, basis };
}

/** What of a cause reaches the airflow, a fraction with its sign. */
export function reaching({ u, moves }: AirflowSource): number {
  return u * (moves.airflow ?? 0);
}

/** Combined standard uncertainty of causes that know nothing of one another. */
export function combined(sources: readonly AirflowSource[]): number {
  return Math.hypot(...sources.map(reaching));
}
