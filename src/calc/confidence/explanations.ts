import type { SourceKey } from '../sources.ts';
import type { Assessment, Check, Ranged } from '../types.ts';
import { faultEffects } from './faultEffects.ts';
import { leakPrices } from './leaks.ts';

export type Evidence = 'supports' | 'against' | 'silent';

/** One place to look, in the order in which one looks. */
export interface Explanation {
  readonly code: string;
  readonly group: 'measurement' | 'leaks' | 'mechanical' | 'refrigerant';
  /** For people who may open the circuit: the rest is for anyone careful. */
  readonly licensed: boolean;
  /** Its size, where one is priced, and what that makes of the reading: shown over real, less one. A band. */
  readonly size: number | null;
  readonly reads: { readonly low: number; readonly high: number } | null;
  /** Whether an effect of that size stands out of the range of this test; `null` where nothing is priced. */
  readonly isVisible: boolean | null;
  /** What the figures of this test say of it, where their uncertainty allows. */
  readonly evidence: Evidence;
  /** The checks and remarks that say so. */
  readonly by: readonly string[];
  readonly source: SourceKey;
}

/** A figure of the test that lies as a whole beyond what is usual. */
type Sign = `${Check['code']}.${'low' | 'high'}`;

interface Place {
  readonly code: string;
  readonly group: Explanation['group'];
  /** Remarks and signs that speak for it, and those that speak against. */
  readonly supports?: readonly (Sign | (string & {}))[];
  readonly against?: readonly Sign[];
}

/** Common practice, no source, but where a price has one of its own. The measurement comes first. */
const places: readonly Place[] = [
  { code: 'sideBySide', group: 'measurement', supports: ['probesApart', 'probeHumiditiesApart', 'probesDrifted'] },
  { code: 'probePlace', group: 'measurement', supports: ['supplyUneven', 'swapped', 'noTemperatureDrop'] },
  { code: 'wetProbe', group: 'measurement', supports: ['supplyWetProbe', 'leavingWetter'] },
  {
    code: 'airflowFigure',
    group: 'measurement',
    supports: [
      'airflowPerTon',
      'airflowPlaceUnsure',
      'airflowKindUnsure',
      'airflowPlaceAndKindUnsure',
      'seaLevelPressure',
    ],
  },
  {
    code: 'wrongRow',
    group: 'measurement',
    supports: ['nominalMismatch', 'basisUnknown', 'totalFallsWithWetBulb', 'totalRisesWithOutdoor'],
  },
  { code: 'stage', group: 'measurement', supports: ['notFullSpeed'] },
  { code: 'notSteady', group: 'measurement' },
  {
    code: 'bypass',
    group: 'leaks',
    supports: ['bypassFactor.high', 'supplyHumidity.low', 'supplyDry'],
    against: ['bypassFactor.low'],
  },
  {
    code: 'cabinet',
    group: 'leaks',
    supports: ['bypassFactor.high', 'supplyHumidity.low', 'supplyDry'],
    against: ['bypassFactor.low'],
  },
  { code: 'returnLeak', group: 'leaks' },
  {
    code: 'indoorAirflow',
    group: 'mechanical',
    supports: ['airflowPerCapacity.low', 'temperatureDrop.high', 'apparatusDewPoint.low', 'frost'],
    against: ['airflowPerCapacity.high', 'temperatureDrop.low'],
  },
  { code: 'outdoorAirflow', group: 'mechanical' },
  { code: 'undercharge', group: 'refrigerant', supports: ['apparatusDewPoint.high', 'temperatureDrop.low'] },
  { code: 'restriction', group: 'refrigerant', supports: ['temperatureDrop.low'] },
  { code: 'nonCondensables', group: 'refrigerant' },
];

/**
 * Where to look when the ratio is not what it should be, as data: the measurement first, then leaks at the unit, then what is
 * easy, then the circuit. Leaks are priced at the states of this test, faults as published bands; a sign counts only where its
 * whole range lies beyond the usual. Nothing here is a diagnosis. Empty while the two states are not known.
 */
export function explanations(assessment: Assessment): readonly Explanation[] {
  const { entering, leaving, remarks } = assessment;
  if (!entering.ok || !leaving.ok) return [];
  const signs = new Set([...remarks.map(({ code }) => code), ...signsOf(assessment)]);
  const prices = leakPrices(entering.value, leaving.value);
  return places.flatMap(({ code, group, supports = [], against = [] }): Explanation[] => {
    const forIt = supports.filter((sign) => signs.has(sign));
    const againstIt = against.filter((sign) => signs.has(sign));
    const evidence = forIt.length > 0 === againstIt.length > 0 ? 'silent' : forIt.length > 0 ? 'supports' : 'against';
    const common = { code, group, licensed: group === 'refrigerant', evidence, by: [...forIt, ...againstIt] } as const;
    const leak = prices.find((price) => price.code === code);
    const faults = faultEffects.filter((effect) => effect.code === code);
    if (leak) {
      const reads = { low: leak.reads, high: leak.reads };
      return [{ ...common, size: leak.share, reads, isVisible: isVisible(assessment, reads), source: leak.source }];
    }
    if (faults.length > 0) {
      return faults.map(({ size, low, high, source }) => {
        const reads = { low: low - 1, high: high - 1 };
        return { ...common, size, reads, isVisible: isVisible(assessment, reads), source };
      });
    }
    return [{ ...common, size: null, reads: null, isVisible: null, source: 'commonPractice' }];
  });
}

/** Whether the smaller end of a band is more than the ratio can be told to, relative. */
function isVisible(
  { ratio }: Assessment,
  { low, high }: { readonly low: number; readonly high: number },
): boolean | null {
  if (!ratio.ok) return null;
  const { value, interval } = ratio.value;
  return Math.min(Math.abs(low), Math.abs(high)) > (interval.high - value) / value;
}

/** The checks whose figure lies beyond the usual with its whole range. */
function signsOf({ checks, ranges }: Assessment): readonly Sign[] {
  return checks.flatMap(({ code, value, usual }): Sign[] => {
    const range = ranges[rangeOf[code]];
    if (value === null || !range) return [];
    // The airflow for each ton has the range of the airflow, in proportion.
    const scale = code === 'airflowPerCapacity' ? value / range.value : 1;
    if (range.interval.high * scale < usual[0]) return [`${code}.low`];
    return range.interval.low * scale > usual[1] ? [`${code}.high`] : [];
  });
}

const rangeOf = {
  airflowPerCapacity: 'dryAirFlow',
  temperatureDrop: 'temperatureDrop',
  supplyHumidity: 'supplyHumidity',
  condensate: 'condensate',
  apparatusDewPoint: 'apparatusDewPoint',
  bypassFactor: 'bypassFactor',
} as const satisfies Record<Check['code'], Ranged>;
