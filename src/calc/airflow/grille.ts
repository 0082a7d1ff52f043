import { CalcError, within } from '../errors.ts';
import { attempt } from '../outcome.ts';
import { amount } from '../trace.ts';
import type { Problem, Trace } from '../types.ts';
import { fromProblem, mean, missingCause, readList } from './cells.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, ofLimit, remark } from './found.ts';
import { type AirThere, checkAir } from './instruments.ts';
import { airflowLimits } from './limits.ts';
import { traceFlow } from './velocity.ts';

export interface Grille {
  /** Velocities over its face, m/s; `null` where nothing stands yet. */
  readonly readings: readonly (number | null)[];
  /** Of the face, m. */
  readonly width: number;
  readonly height: number;
  /** Share of the face that counts, for this grille, instrument and way of holding it. */
  readonly areaFactor: number;
}

export interface GrilleVane {
  readonly grilles: readonly Grille[];
  /** Where the area factors come from: the grille's maker, a traverse on the spot, or a guess. */
  readonly factorFrom: 'maker' | 'traverse' | 'guess';
  readonly air: AirThere;
  readonly speed?: BlowerSpeed | undefined;
}

export interface GrilleVaneFound extends AirflowFound {
  /** m³/s of each grille; `null` without a reading. */
  readonly flows: readonly (number | null)[];
}

/** Standard uncertainties, common practice, no source; the weakest of all methods. */
const factorError = { traverse: 0.06, maker: 0.1, guess: 0.2 } as const;
const vane = ofLimit(0.05);
/** Air drawn in behind the grilles. */
const leaks = 0.05;

/**
 * Airflow by a vane over the return grilles, actual m³/s: mean velocity times face times area factor, summed. A grille without
 * a reading, or with a size or factor out of range, counts as the mean of the others and makes the answer partial; so do bad cells ('grilles.0.readings.3'). Throws a
 * `CalcError` for no grille, none read, or a size or factor out of range ('grilles.0.areaFactor').
 */
export function airflowFromGrille({ grilles, factorFrom, air, speed }: GrilleVane, t?: Trace): GrilleVaneFound {
  checkAir(air);
  const each = grilles.map((grille, i) => ofGrille(grille, `grilles.${i}`, t));
  const there = each.filter((one) => one.flow !== null);
  const problems = each.flatMap((one) => one.problems);
  if (there.length === 0) throw nothingRead(problems[0], grilles.length);
  const flows = there.map(({ flow }) => flow as number);
  const total = mean(flows) * grilles.length;
  const missing = mean(each.map((one) => one.missing));
  const spread = there.flatMap(({ relative }) => relative);
  const causes: readonly Cause[] = [
    { name: 'grille.areaFactor', u: factorError[factorFrom], basis: 'commonPractice' },
    { name: 'instrument.vane', u: vane, basis: 'commonPractice', shape: 'rectangular' },
    { name: 'hood.leaks', u: leaks, basis: 'commonPractice' },
    ...missingCause('grille.missing', spread, missing),
  ];
  const remarks = [
    remark('weakestMethod', 'doubt', amount('u', 'fraction', factorError[factorFrom])),
    ...(factorFrom === 'guess' ? [remark('areaFactorGuessed', 'doubt')] : []),
    remark('leaksAfterGrille', 'note', amount('u', 'fraction', leaks)),
  ];
  const at = { specificVolume: air.specificVolume };
  const finding = { method: 'grille', volumeFlow: total, at, causes, remarks, problems, speed } as const;
  return { ...found({ ...finding, partial: missing > 0 }, t), flows: each.map(({ flow }) => flow) };
}

function nothingRead(problem: Problem | undefined, count: number): CalcError {
  if (!problem) return new CalcError('missing', 'grilles', 0, 1, Math.max(1, count));
  return fromProblem(problem);
}

interface One {
  readonly flow: number | null;
  readonly missing: number;
  readonly problems: readonly Problem[];
  /** Its readings over their mean. */
  readonly relative: readonly number[];
}

function ofGrille({ readings, width, height, areaFactor }: Grille, name: string, t?: Trace): One {
  const checks = [
    attempt(() => within(`${name}.width`, width, airflowLimits.side)),
    attempt(() => within(`${name}.height`, height, airflowLimits.side)),
    attempt(() => within(`${name}.areaFactor`, areaFactor, airflowLimits.areaFactor)),
  ];
  const cells = attempt(() => readList(`${name}.readings`, readings, airflowLimits.velocity));
  const problems = [...checks, cells].flatMap((one) => (one.ok ? [] : [one.problem as Problem]));
  if (!cells.ok || problems.length > 0) {
    // A grille that nobody has read yet has nothing wrong with it.
    return { flow: null, missing: 1, problems: problems.filter(({ code }) => code !== 'missing'), relative: [] };
  }
  const { values, missing } = cells.value;
  const velocity = mean(values);
  const face = width * height;
  traceFlow('V̇', velocity, face, t, amount('k', 'ratio', areaFactor));
  return {
    flow: velocity * face * areaFactor,
    missing,
    problems: cells.value.problems,
    relative: values.map((value) => value / velocity),
  };
}
