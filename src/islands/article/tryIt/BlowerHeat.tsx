import { BlowerPicture } from '~/charts/tryIt/BlowerPicture.tsx';
import { formatNumber } from '~/job/format.ts';
import { tryBlower as words } from '~/words/en/tryBlower.ts';
import { capacity, capacityText, inUnitOf, joined, temperature, temperatureStep } from '../../show.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

interface Props {
  readonly figures: Ahead<readonly [gross: number, net: number, rise: number]>;
  /** °C. */
  readonly around: { readonly entering: number; readonly behindCoil: number };
}

/** What a blower's watts make of the supply air, and which of two results the probes then show. */
export function BlowerHeat({ figures, around }: Props) {
  const {
    values: [power = 0],
    row: [gross, net, rise],
    control,
  } = useAhead(figures);
  const watts = joined(inUnitOf(power, 'watt', 0));
  const share = (gross - net) / gross;
  const said = words.said(watts, capacityText(power), `${formatNumber(100 * share, 1)}\u00a0%`, temperatureStep(rise));
  return (
    <TryIt
      id="blower"
      controls={[control(0, words.power, watts)]}
      draw={() => (
        <div class="try-small">
          <BlowerPicture
            heat={share}
            words={{
              returned: temperature(around.entering),
              behindCoil: temperature(around.behindCoil),
              behindBlower: temperature(around.behindCoil + rise),
              gross: words.gross(capacityText(gross)),
              net: words.net(capacityText(net)),
              heat: words.heat(watts),
              summary: said,
            }}
          />
        </div>
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.gross, ...capacity(gross) },
        { name: words.rows.heat, ...capacity(power) },
        { name: words.rows.net, ...capacity(net), sum: true },
      ]}
      caption={words.caption}
    />
  );
}
