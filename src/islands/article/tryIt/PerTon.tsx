import { PerTonPicture } from '~/charts/tryIt/PerTonPicture.tsx';
import { unitLabel } from '~/job/format.ts';
import { fromSi } from '~/job/units.ts';
import { tryPerTon as words } from '~/words/en/tryPerTon.ts';
import { system } from '../../jobStore.ts';
import { capacity, perCapacity, percent, temperatureStep } from '../../show.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

type Row = readonly [total: number, sensible: number, drop: number];

interface Props {
  readonly figures: Ahead<Row>;
  /** m³/s for each ton that the table is printed for, and the total there, W. */
  readonly printed: readonly [flow: number, total: number];
}

/** How the capacity, its two parts and the temperature drop follow the airflow. */
export function PerTon({ figures, printed: [printed, full] }: Props) {
  const {
    values: [flow = 0],
    row,
    control,
  } = useAhead(figures);
  const [total, sensible, drop] = row;
  const unit = system.value === 'ip' ? 'cfmPerTon' : 'lsPerKw';
  const point = (at: number, [all, part]: Row) => ({
    flow: fromSi(at, unit),
    total: (100 * all) / full,
    sensible: (100 * part) / full,
  });
  const said = words.said(perCapacity(flow), percent(flow / printed), percent(total / full), temperatureStep(drop));
  return (
    <TryIt
      id="per-ton"
      controls={[control(0, words.flow, perCapacity(flow))]}
      draw={(width) => (
        <PerTonPicture
          points={figures.rows.map((one, i) => point(figures.dials[0]?.stops[i] ?? 0, one))}
          at={point(flow, row)}
          printed={fromSi(printed, unit)}
          width={width}
          words={{ ...words, flow: words.flowAxis(unitLabel(unit)), summary: said }}
        />
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.sensible, ...capacity(sensible) },
        { name: words.latent, ...capacity(total - sensible) },
        { name: words.total, ...capacity(total), sum: true },
      ]}
      caption={words.caption}
    />
  );
}
