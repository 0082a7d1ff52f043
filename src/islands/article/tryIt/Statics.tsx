import { StaticsPicture } from '~/charts/tryIt/StaticsPicture.tsx';
import { unitLabel } from '~/job/format.ts';
import { displayUnit, fromSi } from '~/job/units.ts';
import { tryStatics as words } from '~/words/en/tryStatics.ts';
import { system } from '../../jobStore.ts';
import { joined, ofKind, percent } from '../../show.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

interface Props {
  readonly figures: Ahead<readonly [flow: number, supplyOnly: number]>;
  /** Pa and m³/s, as they are printed. */
  readonly blower: readonly (readonly [pressure: number, flow: number])[];
}

/** Two static pressures added, the fan table read at their sum, and what forgetting one of them does. */
export function Statics({ figures, blower }: Props) {
  const {
    values: [supply = 0, returned = 0],
    row: [flow, supplyOnly],
    control,
  } = useAhead(figures);
  const units = { flow: displayUnit.volumeFlow[system.value], pressure: displayUnit.airPressure[system.value] };
  const pressureText = (si: number) => joined(ofKind('airPressure', si));
  const [pressureOf, flowOf] = [(si: number) => fromSi(si, units.pressure), (si: number) => fromSi(si, units.flow)];
  const sum = supply + returned;
  const said = words.said(pressureText(sum), joined(ofKind('volumeFlow', flow)), percent(supplyOnly / flow - 1));
  return (
    <TryIt
      id="statics"
      controls={[control(0, words.supply, pressureText(supply)), control(1, words.returned, pressureText(returned))]}
      draw={(width) => (
        <StaticsPicture
          blower={blower.map(([pressure, at]) => [pressureOf(pressure), flowOf(at)])}
          supply={pressureOf(supply)}
          returned={pressureOf(returned)}
          flow={flowOf(flow)}
          supplyOnly={flowOf(supplyOnly)}
          width={width}
          words={{
            pressure: words.pressureAxis(unitLabel(units.pressure)),
            flow: words.flowAxis(unitLabel(units.flow)),
            supply: words.supplySide,
            returned: words.returnSide,
            supplyOnly: words.supplyOnly,
            summary: said,
          }}
        />
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.sum, ...ofKind('airPressure', sum) },
        { name: words.rows.flow, ...ofKind('volumeFlow', flow) },
        { name: words.rows.supplyOnly, ...ofKind('volumeFlow', supplyOnly) },
      ]}
      caption={words.caption}
    />
  );
}
