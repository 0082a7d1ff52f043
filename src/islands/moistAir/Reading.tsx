import { useEffect, useState } from 'preact/hooks';
import { moistAir } from '~/calc/moistAir.ts';
import type { MoistAir } from '~/calc/types.ts';
import { formatNumber } from '~/job/format.ts';
import { quantityOf } from '~/job/quantities.ts';
import { read } from '~/job/read.ts';
import type { Cell } from '~/job/states.ts';
import type { System } from '~/job/types.ts';
import { fromSi } from '~/job/units.ts';
import { readingWords } from '~/words/en/moistAir.ts';
import { CellField } from '../CellField.tsx';
import { shownUnit } from '../fields.ts';
import { airOfSpot, points, pressure } from './points.ts';
import { allSaid, properties, propertyOf } from './said.ts';
import { cross, openStep } from './view.ts';

/** All properties of the air under the cross-hair, or of the point whose step is open. */
export function Reading() {
  const spot = cross.value;
  const point = points.value.find(({ key }) => key === openStep.value) ?? points.value[0];
  const air = spot ? airOfSpot(spot) : point?.air;
  return (
    <section class="air-reading" aria-labelledby="air-reading-head">
      <h2 id="air-reading-head" class="air-reading-head">
        <span>{spot ? readingWords.under : (point?.name ?? readingWords.title)}</span>
        {spot ? (
          <button type="button" class="plain-button" onClick={() => put(null)}>
            {readingWords.clear}
          </button>
        ) : (
          <span class="hint">{readingWords.hint}</span>
        )}
      </h2>
      <dl class="air-properties">
        {properties.map((property) => {
          const { number, unit } = air ? propertyOf(air, property) : { number: '–', unit: '' };
          return (
            <div key={property}>
              <dt>{readingWords.properties[property]}</dt>
              <dd>
                {number} <small>{unit}</small>
              </dd>
            </div>
          );
        })}
      </dl>
      <ReadHere />
      <Said air={spot && air ? air : null} />
    </section>
  );
}

const put = (air: MoistAir | null) => {
  cross.value = air;
};

/** What the cross-hair reads, spoken once it rests. */
function Said({ air }: { air: MoistAir | null }) {
  const [said, say] = useState('');
  const words = air ? allSaid(air) : '';
  useEffect(() => {
    const timer = setTimeout(() => say(words), 500);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <p class="spoken" role="status">
      {said}
    </p>
  );
}

type Typed = { readonly dryBulb?: string; readonly relativeHumidity?: string };

/** The place of the cross-hair by its figures. */
function ReadHere() {
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
      put(moistAir({ dryBulb: t.si, relativeHumidity: humidity.si, pressure: pressure.value }));
    }
    return true;
  };
  return (
    <details class="fold">
      <summary>{readingWords.fold}</summary>
      <div
        class="field-row"
        onFocusOut={(event) => {
          if (spot && !event.currentTarget.contains(event.relatedTarget as Node | null)) type({});
        }}
      >
        <CellField
          id="cross-dryBulb"
          of="state.dryBulb"
          name={readingWords.dryBulb}
          cell={cellOf('dryBulb')}
          onText={write('dryBulb')}
        />
        <CellField
          id="cross-humidity"
          of="state.relativeHumidity"
          name={readingWords.humidity}
          cell={cellOf('relativeHumidity')}
          onText={write('relativeHumidity')}
        />
      </div>
    </details>
  );
}
