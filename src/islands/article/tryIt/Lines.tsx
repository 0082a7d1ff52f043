import { LineDrawing } from '~/charts/lines/LineDrawing.tsx';
import { LossScale } from '~/charts/lines/LossScale.tsx';
import { formatNumber } from '~/job/format.ts';
import { displayUnit } from '~/job/units.ts';
import { lineDrawing } from '~/words/en/lineSetResults.ts';
import { tryLines as words } from '~/words/en/tryLines.ts';
import { system } from '../../jobStore.ts';
import { inUnitOf, joined, temperatureStep } from '../../show.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

interface Props {
  readonly figures: Ahead<readonly [low: number, high: number, subcoolingLeft: number]>;
  /** By their nominal diameters: the vapour tubes to choose from, and the liquid tube. */
  readonly vaporTubes: readonly string[];
  readonly liquidTube: string;
}

const percentOf = (share: number) => formatNumber(100 * share, 1);

/** What length, lift and the size of the vapour tube leave of capacity and subcooling. */
export function Lines({ figures, vaporTubes, liquidTube }: Props) {
  const {
    values: [length = 1, lift = 0, tube = 0],
    row: [low, high, subcooling],
    control,
  } = useAhead(figures);
  const feet = (si: number) => joined(inUnitOf(si, displayUnit.length[system.value], 0));
  const height = feet(Math.abs(lift));
  const vapor = lineDrawing.vapor(`${vaporTubes[tube]}\u00a0in`);
  const liquid = lineDrawing.liquid(`${liquidTube}\u00a0in`);
  const side = lift === 0 ? words.level : (lift > 0 ? words.above : words.below)(height);
  const cost = words.cost(percentOf(1 - high), `${percentOf(1 - low)}\u00a0%`);
  const said = subcooling < 0 ? words.boils(cost) : words.left(cost, temperatureStep(subcooling));
  const up = lift === 0 ? lineDrawing.level : (lift > 0 ? lineDrawing.up : lineDrawing.down)(height);
  return (
    <TryIt
      id="lines"
      controls={[
        control(0, words.length, feet(length)),
        control(1, words.lift, side),
        control(2, words.wide, '', true),
      ]}
      draw={(width) => (
        <>
          <LineDrawing
            lift={lift / length}
            width={width}
            words={{
              outdoor: lineDrawing.outdoor,
              indoor: lineDrawing.indoor,
              vapor,
              liquid,
              length: feet(length),
              height: lift === 0 ? '' : height,
              summary: lineDrawing.summary(feet(length), vapor, liquid, up),
            }}
          />
          <LossScale
            factor={(low + high) / 2}
            low={low}
            high={high}
            width={width}
            words={{ rated: words.rated, summary: said }}
          />
        </>
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.most, number: percentOf(high), unit: '%' },
        { name: words.rows.least, number: percentOf(low), unit: '%' },
        {
          name: words.rows.subcooling,
          ...inUnitOf(subcooling, displayUnit.temperatureDifference[system.value]),
        },
      ]}
      caption={words.caption}
    />
  );
}
