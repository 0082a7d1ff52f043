import { MisreadPicture } from '~/charts/tryIt/MisreadPicture.tsx';
import { formatNumber } from '~/job/format.ts';
import { tryWetAir as words } from '~/words/en/tryWetAir.ts';
import { capacity, percent } from '../../show.ts';
import { type Ahead, rowAt } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

type Row = readonly [total: number, sensible: number];

const offText = (share: number) => (share > 0 ? words.high : words.low)(percent(Math.abs(share)));
const points = (by: number) => {
  const whole = Math.round(100 * by);
  return whole === 0 ? words.right : words.points(`${whole > 0 ? '+' : ''}${formatNumber(whole, 0)}`);
};

/** What a few points of humidity, misread, make of the cooling: in the supply air, in the return air, or in both. */
export function WetAir({ figures }: { readonly figures: Ahead<Row> }) {
  const {
    values: [supply = 0, returned = 0],
    row: [total, sensible],
    control,
  } = useAhead(figures);
  const right = figures.dials.map(({ stops }) => stops.findIndex((stop) => Math.abs(stop) < 1e-9));
  const [realTotal, realSensible] = rowAt(figures, right);
  const off = total / realTotal - 1;
  const drying = (total - sensible) / (realTotal - realSensible) - 1;
  const dryingText = total < sensible ? words.impossible : offText(drying);
  const isRight = Math.abs(drying) < 0.005;
  const said = isRight
    ? words.nothing
    : Math.abs(off) < 0.005
      ? words.near(dryingText)
      : words.said(offText(off), dryingText);
  return (
    <TryIt
      id="wet-air"
      controls={[control(0, words.supply, points(supply)), control(1, words.returned, points(returned))]}
      draw={(width) => (
        <MisreadPicture
          real={{ total: 1, sensible: realSensible / realTotal }}
          read={{ total: total / realTotal, sensible: sensible / realTotal }}
          width={width}
          words={{ ...words, off: offText(off), summary: said }}
        />
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.real, ...capacity(realTotal) },
        { name: words.rows.read, ...capacity(total) },
        { name: words.rows.drying, ...capacity(total - sensible) },
      ]}
      caption={words.caption}
    />
  );
}
