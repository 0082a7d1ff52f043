/** How sure a figure is: causes of error, budgets, verdicts, and what would make them surer. SI, plain data. */

/** How the error of one cause is spread. A stated ± without more is the half-width of a rectangle. */
export type Shape = 'normal' | 'rectangular' | 'triangular';

/**
 * One independent cause of error. A cause that several inputs share moves them all at once, so that no table of correlations
 * is needed, no share turns negative, and the effective degrees of freedom mean what they say.
 */
export interface ErrorSource<Input extends string> {
  /** Causes of one name were found together: one line of the budget, one term of its degrees of freedom. */
  readonly name: string;
  /** Standard uncertainty. */
  readonly u: number;
  readonly shape: Shape;
  /** `null`: a stated limit, as sure of its width as can be. */
  readonly degreesOfFreedom: number | null;
  /** By how much each input goes with an error of one. */
  readonly moves: Readonly<Partial<Record<Input, number>>>;
}

/** The range of a result, from its low to its high point. */
export interface Interval {
  /** The chance that the truth is above `low`, and the chance that it is below `high`: 0.9, or 0.95 for disputes. */
  readonly probability: number;
  /** How many standard uncertainties away the ends are; `null` where the ends were counted among draws. */
  readonly k: number | null;
  readonly low: number;
  readonly high: number;
}

/** A figure with its uncertainty. */
export interface Budget {
  readonly value: number;
  /** Combined standard uncertainty, in the unit of the value. */
  readonly u: number;
  /** Effective degrees of freedom; `null` when there is no end to them. */
  readonly degreesOfFreedom: number | null;
  readonly interval: Interval;
  /** What each cause contributes, the largest first: its own `u` and its share of the variance. Shares add up to 1. */
  readonly shares: readonly { readonly name: string; readonly u: number; readonly share: number }[];
}

/** Net capacity here over net capacity that this system should have here and now. */
export interface Ratio extends Budget {
  readonly measured: number;
  readonly expected: number;
}

export interface Verdict {
  readonly outcome: 'meets' | 'short' | 'cannotTell';
  /**
   * Why it cannot be told: the line lies inside the range and a check would get it out if the figure stayed (`improvable`),
   * or no check here would (`tooNear`), or the figure is more than the system can make. `null` when it can be told.
   */
  readonly because: 'improvable' | 'tooNear' | 'higherThanItCanMake' | null;
  readonly line: number;
  readonly confidence: number;
  /** The ends that decide and are shown: those of the range, rounded outward to whole per cents. */
  readonly low: number;
  readonly high: number;
  /** The chance that the true ratio is at or above the line. */
  readonly probability: number;
  /** A ratio with this uncertainty would meet the line from here on, and be short of it below there. */
  readonly acceptFrom: number;
  readonly rejectBelow: number;
  readonly by: 'firstOrder' | 'monteCarlo';
  /** The expectation is no maker's table. */
  readonly estimateOnly: boolean;
}

/** One check that would make the ratio surer, with the range that it would give if the figure stayed where it is. */
export interface Improvement {
  readonly change: string;
  readonly u: number;
  readonly low: number;
  readonly high: number;
  readonly decides: boolean;
  /** How long it takes, s. */
  readonly takes: number;
}

/**
 * The raw inputs of a test that can be in error. Dry bulbs and wet bulbs in K, relative humidities as fractions (a humidity is
 * whichever of the two was read), `airflow` and `rating` relative, `pressure` in Pa, blower powers in W. `supplyMixing` is how
 * far the true mean of the supply plane lies from the reading, in K along the line of the process.
 */
export type TestInput =
  | 'entering.dryBulb'
  | 'entering.humidity'
  | 'leaving.dryBulb'
  | 'leaving.humidity'
  | 'airflow'
  | 'pressure'
  | 'supplyMixing'
  | 'outdoorDryBulb'
  | 'rating'
  | 'blower.power'
  | 'rating.blowerPower';

/** The return probe's reading less the supply probe's, both in one air, with the standard uncertainty of that difference. */
export interface ProbeDifference {
  readonly dryBulb: number;
  /** In the measure that the test reads, a fraction or K; `null`: only the temperatures were compared. */
  readonly humidity: number | null;
  /** Of the mean of several readings; `null`: one reading each, and the usual remainder covers it. */
  readonly scatter: {
    readonly dryBulb: number;
    readonly humidity: number;
    readonly degreesOfFreedom: number | null;
  } | null;
}

/** A side-by-side check, SI. */
export interface SideBySide {
  /** Both probes in the return air. */
  readonly returnAir: ProbeDifference;
  /** Again in the supply air: a humidity difference found at 50 % does not hold at 90 %. */
  readonly supplyAir: ProbeDifference | null;
  /** Each probe is moved by half of the difference, unless one of them is taken as right. */
  readonly reference: 'neither' | 'entering' | 'leaving';
  /** By how much the differences had moved when the test was over, without sign; `null`: not looked at again. */
  readonly drift: { readonly dryBulb: number; readonly humidity: number } | null;
  /**
   * After a check in an ice bath or over a salt: half-widths of the error that both probes share, `null`: those of the probes;
   * and what of that error is known, and taken off both readings.
   */
  readonly shared: {
    readonly dryBulb: number | null;
    readonly humidity: number | null;
    readonly error: { readonly dryBulb: number; readonly humidity: number };
  } | null;
}
