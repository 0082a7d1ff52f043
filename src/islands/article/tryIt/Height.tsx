import { HeightPicture } from '~/charts/tryIt/HeightPicture.tsx';
import { formatNumber, unitLabel } from '~/job/format.ts';
import { displayUnit, fromSi } from '~/job/units.ts';
import { tryHeight as words } from '~/words/en/tryHeight.ts';
import { system } from '../../jobStore.ts';
import { inUnitOf, joined, percent } from '../../show.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

interface Props {
  readonly figures: Ahead<readonly [dryAir: number, off: number]>;
  /** The density that habit counts with, and kilograms an hour for a litre a second and pounds an hour for a cfm in one kg/m³. */
  readonly habit: number;
  readonly factors: { readonly ip: number; readonly si: number };
}

/** What the factor 4.5 becomes in thin air, and what it costs to leave it alone. */
export function Height({ figures, habit, factors }: Props) {
  const {
    values: [height = 0],
    row: [dryAir, off],
    control,
  } = useAhead(figures);
  const unit = displayUnit.length[system.value];
  const factor = factors[system.value];
  const text = joined(inUnitOf(height, unit, 0));
  const [byHabit, here] = [habit, dryAir].map((density) => formatNumber(density * factor, 2)) as [string, string];
  const said = words.said(text, byHabit, here, percent(off));
  return (
    <TryIt
      id="height"
      controls={[control(0, words.height, text)]}
      draw={(width) => (
        <HeightPicture
          points={figures.rows.map(([density], i) => [fromSi(figures.dials[0]?.stops[i] ?? 0, unit), density * factor])}
          at={[fromSi(height, unit), dryAir * factor]}
          habit={habit * factor}
          width={width}
          words={{
            height: words.heightAxis(unitLabel(unit)),
            factor: words.factor[system.value],
            habit: words.habit(byHabit),
            here,
            off: words.off(percent(off)),
            summary: said,
          }}
        />
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.habit, number: byHabit, unit: '' },
        { name: words.rows.here, number: here, unit: '' },
        { name: words.rows.off, number: formatNumber(100 * off, 0), unit: '%' },
      ]}
      caption={words.caption}
    />
  );
}
