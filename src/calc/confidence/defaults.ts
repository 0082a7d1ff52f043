import { fahrenheitDegree } from '../units.ts';

/**
 * What an error is taken for until someone knows better. All of it is common practice, no source: the data sheet of the
 * instrument outranks it. Half-widths of rectangles but where it says standard uncertainty. Temperatures in K.
 */
export const usual = {
  /** Of the figure, where its method is not known. */
  airflow: 0.1,
  /** The air that goes into the outdoor unit: the instrument, and the air that is not the same all around it. */
  outdoorDryBulb: fahrenheitDegree,
  /** One point of the supply plane for its mean. */
  supplyMixing: fahrenheitDegree,
  /** The weather around the standard pressure of a height, relative; and an instrument on the spot. */
  pressureByHeight: 0.01,
  pressureByInstrument: 0.002,
  /** Reading between the rows of a table, and its rounding, relative. */
  interpolation: 0.005,
  /** A blower's power that was measured, and one that was taken for its airflow: 0.2 to 0.53 W/cfm. Relative. */
  blowerMeasured: 0.05,
  blowerAssumed: 0.45,
  /**
   * The published airflow curves against one another, as a share of what the step changes: 0.954 to 0.966 at 0.8 of the flow,
   * where the one in use has 0.96.
   */
  flowCurve: 0.15,
  /** More for a supply humidity that was compared only in the drier return air. */
  supplyHumidity: 0.01,
  /** A change of the difference by the end that is too small to count. */
  drift: { dryBulb: 0.2 * fahrenheitDegree, humidity: { relativeHumidity: 0.01, wetBulb: 0.2 * fahrenheitDegree } },
  /** What of an error that an airflow or a spot in the plane has at two visits is another one at each, as a share of it. */
  newAtEachVisit: { airflow: 0.3, supplyMixing: 0.5 },
  /** A difference of two probes that is nothing out of the way. */
  difference: { dryBulb: 0.5 * fahrenheitDegree, relativeHumidity: 0.01, wetBulb: 0.3 * fahrenheitDegree },
  /** The widest spread of dry bulbs over the leaving plane that a laboratory allows (10 CFR 430, appendix M1, 3.1.8). */
  supplySpread: 1.5 * fahrenheitDegree,
} as const;
