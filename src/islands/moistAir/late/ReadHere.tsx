import { useState } from 'preact/hooks';
import { moistAir } from '~/calc/moistAir.ts';
import { formatNumber } from '~/job/format.ts';
import { quantityOf } from '~/job/quantities.ts';
import { read } from '~/job/read.ts';
import type { Cell } from '~/job/states.ts';
import type { System } from '~/job/types.ts';
import { fromSi } from '~/job/units.ts';
import { readHere } from '~/words/en/moistAirSteps.ts';
import { CellField } from '../../CellField.tsx';
import { shownUnit } from '../../fields.ts';
import { airOfSpot, pressure } from '../points.ts';
import { cross } from '../view.ts';

type Typed = { readonly dryBulb?: string; readonly relativeHumidity?: string };

/** The place of the cross-hair by its figures. */
export function ReadHere() {
  // Texts that are being typed; once they are read, the fields follow the cross-hair.
  const [typed, type] = useState<Typed>({});
  const spot = cross.value;
  const air = spot && airOfSpot(spot);
  const cellOf = (what: keyof Typed): Cell => {
    const key = `state.${what}` as const;
    const unit = shownUnit(key);
    const decimals = quantityOf(key).decimals[unit === quantityOf(key).ip ? 'ip' : 'si'];
    const shown = air ? formatNumber(fromSi(air[what], unit), decimals) : '';
    const text = typed[what] ?? shown;
    return { text, unit, read: read(text, key, unit) };
  };
  const write = (what: keyof Typed) => (text: string, _: System) => {
    const now = { dryBulb: cellOf('dryBulb').text, relativeHumidity: cellOf('relativeHumidity').text, [what]: text };
    const [t, humidity] = (['dryBulb', 'relativeHumidity'] as const).map((one) =>
      read(now[one], `state.${one}`, shownUnit(`state.${one}`)),
    );
    type(now);
    if (t?.state === 'read' && humidity?.state === 'read') {
      cross.value = moistAir({ dryBulb: t.si, relativeHumidity: humidity.si, pressure: pressure.value });
    }
    return true;
  };
  return (
    <div
      class="field-row"
      onFocusOut={(event) => {
        if (spot && !event.currentTarget.contains(event.relatedTarget as Node | null)) type({});
      }}
    >
      <CellField
        id="cross-dryBulb"
        of="state.dryBulb"
        name={readHere.dryBulb}
        cell={cellOf('dryBulb')}
        onText={write('dryBulb')}
      />
      <CellField
        id="cross-humidity"
        of="state.relativeHumidity"
        name={readHere.humidity}
        cell={cellOf('relativeHumidity')}
        onText={write('relativeHumidity')}
      />
    </div>
  );
}
