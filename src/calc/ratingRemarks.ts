import { isFlowOutside } from './airflowStep.ts';
import { tableRange } from './expectationChain.ts';
import type { Facts, Rule } from './facts.ts';
import { axisSigns } from './ratedTrace.ts';
import { ratingPoint } from './ratingPoint.ts';
import { given } from './readings.ts';
import { axisOrder } from './tableCheck.ts';
import { amount } from './trace.ts';
import type { Amount, Axis, DerateCause, Expectation, Remark } from './types.ts';

/** How near, K, a row must be to the rating point to stand for it. */
const nearPoint = 0.3;
/** A capacity at the rating point that far from the nameplate is another machine's, or another unit. Our choice. */
const nominalGap = 0.15;
/** Flow that far from the block's makes the published flow curve matter by 2 %. Our choice. */
const blockGap = 0.1;
/** A band by altitude that is worth a word. Our choice. */
const leastAltitudeBand = 0.01;

const aboutAxis: Readonly<Record<Axis, Remark['about']>> = {
  outdoorDryBulb: 'outdoors',
  enteringWetBulb: 'entering',
  enteringDryBulb: 'entering',
  dryAirFlow: 'airflow',
};

/** The reading and the ends of the table on an axis; `null` inside it, and where the table does not vary with it. */
function beyondAxis({ rating, expected }: Facts, axis: Axis): readonly Amount[] | null {
  const at = rating?.conditions[axis];
  if (!rating || at === undefined) return null;
  // A dry coil works as at a higher wet bulb, and thin air holds less of the airflow: the expectation knows.
  if (expected && !expected.outside.includes(axis)) return null;
  const range = tableRange(rating.table, axis);
  const inside = range && at >= range[0] - 1e-9 && at <= range[1] + 1e-9;
  const { table, installation } = rating;
  const fits = axis === 'dryAirFlow' ? !isFlowOutside(table, at, installation.pressure) : inside;
  if (!range || fits) return null;
  const { symbol, kind } = axisSigns[axis];
  return [amount(symbol, kind, at), amount(`${symbol}ₗ`, kind, range[0]), amount(`${symbol}ₕ`, kind, range[1])];
}

const bandOf = ({ derates }: Expectation, cause: DerateCause): number =>
  derates.find((derate) => derate.cause === cause)?.band ?? 0;

function blowerRule(code: string, assumed: 'here' | 'inside' | 'both' | 'bothByKind'): Rule {
  return {
    code,
    weight: 'note',
    about: 'rating',
    amounts: ({ rating, flow }) => {
      if (!rating || !flow || rating.blowers.assumed !== assumed) return null;
      const { here, inside } = rating.blowers;
      const own = amount('Pᵦ', 'power', here);
      const rated = amount('Pᵣ', 'power', inside);
      return assumed === 'inside' ? [rated] : assumed === 'bothByKind' ? [own, rated] : [own];
    },
  };
}

/** What the table says of the test, and the test of the table. */
export const ratingRules: readonly Rule[] = [
  ...axisOrder.map(
    (axis): Rule => ({
      code: 'outsideTable',
      weight: 'stop',
      about: aboutAxis[axis],
      amounts: (facts) => beyondAxis(facts, axis),
    }),
  ),
  {
    // The block of the table is for another airflow: a second block would serve better than the published curve.
    code: 'blockAirflow',
    weight: 'note',
    about: 'rating',
    amounts: ({ flow, rating }) => {
      const [stated, second] = rating?.table.axes.dryAirFlow ?? [];
      if (!flow || stated === undefined || second !== undefined) return null;
      const ratio = flow.dryAirFlow / stated;
      if (Math.abs(ratio - 1) <= blockGap) return null;
      return [amount('ṁ', 'massFlow', flow.dryAirFlow), amount('ṁᵣ', 'massFlow', stated), amount('f', 'ratio', ratio)];
    },
  },
  {
    // The wrong row, the wrong unit, the wrong machine, or half a machine.
    code: 'nominalMismatch',
    weight: 'doubt',
    about: 'rating',
    amounts: ({ test: { rating, nominalCapacity } }) => {
      if (!rating || !given(nominalCapacity) || !(nominalCapacity > 0)) return null;
      const totals = rating.rows
        .filter(
          ({ outdoorDryBulb, enteringWetBulb }) =>
            Math.abs(outdoorDryBulb - ratingPoint.outdoorDryBulb) <= nearPoint &&
            Math.abs(enteringWetBulb - ratingPoint.enteringWetBulb) <= nearPoint,
        )
        .flatMap(({ total }) => (Number.isFinite(total) ? [total as number] : []));
      const gap = (total: number) => Math.abs(total / nominalCapacity - 1);
      const nearest = totals.sort((a, b) => gap(a) - gap(b))[0];
      if (nearest === undefined || gap(nearest) <= nominalGap) return null;
      return [amount('Q', 'power', nearest), amount('Qₙ', 'power', nominalCapacity)];
    },
  },
  {
    // The middle of net and gross is taken; the amount is half of what lies between, over the expectation.
    code: 'basisUnknown',
    weight: 'doubt',
    about: 'rating',
    amounts: ({ test, rating, expected }) => {
      const basis = test.rating?.basis;
      if (!rating || !expected || basis === 'net' || basis === 'gross') return null;
      return [amount('Δ', 'fraction', rating.blowers.inside / 2 / expected.total)];
    },
  },
  {
    // Published curves stand for the table: whatever comes of it is an estimate.
    code: 'genericUsed',
    weight: 'note',
    about: 'rating',
    amounts: ({ rating, expected }) =>
      rating?.table.from === 'generic' && expected ? [amount('Δ', 'fraction', bandOf(expected, 'temperatures'))] : null,
  },
  {
    // Below this wet bulb the coil takes out no water: the total is all sensible, and no row of the table by wet bulb says more.
    code: 'shouldBeDry',
    weight: 'note',
    about: 'rating',
    amounts: ({ expected }) =>
      expected?.coil?.dry ? [amount('t*ₒ', 'temperature', expected.coil.dryOutWetBulb)] : null,
  },
  {
    // The outdoor coil has thinner air too; by how much that counts is not settled, so it widens the range.
    code: 'altitudeBand',
    weight: 'note',
    about: 'rating',
    amounts: ({ expected }) => {
      const band = expected ? bandOf(expected, 'altitude') : 0;
      return band >= leastAltitudeBand ? [amount('Δ', 'fraction', band)] : null;
    },
  },
  // This system's blower power is the default for its airflow.
  blowerRule('blowerAssumed', 'here'),
  // The blower power inside the rating is the default for its airflow.
  blowerRule('ratingBlowerAssumed', 'inside'),
  // Both are defaults, each by its own kind.
  blowerRule('blowersByKind', 'bothByKind'),
  // Nobody knows either: taken equal, so nothing is corrected.
  blowerRule('blowersTakenEqual', 'both'),
  {
    // There the maker's own table does not hold either.
    code: 'linesBeyondMaker',
    weight: 'stop',
    about: 'rating',
    amounts: ({ rating }) =>
      rating?.lines?.cautions.some((code) => code === 'beyondMakersLength' || code === 'beyondMakersLift') ? [] : null,
  },
  {
    // A table of the low stage says nothing of a machine at full speed; one that nobody knows the speed of is told below.
    code: 'lowStageTable',
    weight: 'stop',
    about: 'rating',
    amounts: ({ test: { rating, fullSpeed } }) =>
      rating?.stage === 'low' && given(fullSpeed) && fullSpeed !== 'unsure' ? [] : null,
  },
  {
    // A machine below full speed makes less by its own choice, and no table stands for it.
    code: 'notFullSpeed',
    weight: 'stop',
    about: 'outdoors',
    amounts: ({ test: { fullSpeed } }) => (fullSpeed === 'unsure' ? [] : null),
  },
];
