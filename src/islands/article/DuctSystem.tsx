import { useEffect, useState } from 'preact/hooks';
import { type CurvePoint, DuctCurve } from '~/charts/airflow/DuctCurve.tsx';
import { unitLabel } from '~/job/format.ts';
import { displayUnit, fromSi } from '~/job/units.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { Slide, slideId } from '~/parts/Slide.tsx';
import { ductSystemWords as words } from '~/words/en/ductSystem.ts';
import { useEarlySlide } from '../earlySlide.ts';
import { system } from '../jobStore.ts';
import { followUnits } from '../opening.ts';
import { joined, ofKind, percent } from '../show.ts';
import { useWidth } from '../useWidth.ts';
import { blowerCurve, type Change, ductCurve, meetingOf } from './ductExample.ts';

const asItWas: Change = { filter: 1, shut: 0 };
/** The column of a phone, until the own one is known. */
const narrow = 358;

/** An invented blower and its ducts: what a dirty filter or shut registers do to the airflow, to be tried out. */
export function DuctSystem() {
  const [filter, setFilter] = useState('2');
  const [shut, setShut] = useState('0');
  const [box, width] = useWidth();
  useEffect(followUnits, []);
  const change = { filter: read(filter, ranges.filter) ?? 1, shut: (read(shut, ranges.shut) ?? 0) / 100 };
  return (
    <figure class="picture">
      <div ref={box}>
        <Picture change={change} width={width || narrow} />
      </div>
      <Try of="filter" text={filter} onText={setFilter} />
      <Try of="shut" text={shut} onText={setShut} />
      <figcaption>{words.caption}</figcaption>
    </figure>
  );
}

/** What may be typed, and the step of the slider. */
const ranges = { filter: { min: 1, max: 5, step: 0.5 }, shut: { min: 0, max: 60, step: 5 } } as const;

/** A number within a range; `null` for any other text. */
function read(text: string, { min, max }: { readonly min: number; readonly max: number }): number | null {
  const number = Number(text.replace(',', '.'));
  return text.trim() !== '' && number >= min && number <= max ? number : null;
}

interface TryProps {
  readonly of: keyof typeof ranges;
  readonly text: string;
  readonly onText: (text: string) => void;
}

function Try({ of: key, text, onText }: TryProps) {
  const { min, max, step } = ranges[key];
  const value = read(text, ranges[key]);
  const slide = (to: number) => onText(String(to));
  useEarlySlide(slideId(`ducts-${key}`), slide);
  return (
    <Slide
      id={`ducts-${key}`}
      name={words.names[key]}
      text={text}
      value={value ?? min}
      unit={words.units[key]}
      min={min}
      max={max}
      step={step}
      problem={value === null ? words.problem(String(min), String(max)) : null}
      onText={onText}
      onBlur={() => {}}
      onSlide={slide}
    />
  );
}

/** The two curves, and the same in a sentence and a table. */
function Picture({ change, width }: { change: Change; width: number }) {
  const units = { flow: displayUnit.volumeFlow[system.value], static: displayUnit.airPressure[system.value] };
  const shown = (point: CurvePoint): CurvePoint => ({
    flow: fromSi(point.flow, units.flow),
    static: fromSi(point.static, units.static),
  });
  const was = meetingOf(asItWas);
  const now = meetingOf(change);
  if (!was.ok) return null;
  const { before } = was.value;
  const after = now.ok ? now.value.after : null;
  const flowText = (point: CurvePoint) => joined(ofKind('volumeFlow', point.flow));
  const staticText = (point: CurvePoint) => joined(ofKind('airPressure', point.static));
  const less = after ? 1 - after.flow / before.flow : 0;
  const said = after ? words.said(flowText(before), flowText(after), percent(less), staticText(after)) : words.beyond;
  return (
    <>
      <DuctCurve
        blower={blowerCurve.map(shown)}
        before={{ curve: ductCurve(asItWas).map(shown), at: shown(before) }}
        after={{ curve: ductCurve(change).map(shown), at: after && shown(after) }}
        width={width}
        words={{
          flow: `${words.flow}, ${unitLabel(units.flow)}`,
          static: `${words.static}, ${unitLabel(units.static)}`,
          blower: words.blower,
          before: words.before,
          after: words.after,
          summary: said,
        }}
      />
      <p role="status">{said}</p>
      <ScrollRegion label={words.table}>
        <table class="ledger">
          <caption class="spoken">{words.table}</caption>
          <thead>
            <tr>
              <td />
              <th scope="col" class="number">
                {words.flow}
              </th>
              <th scope="col" class="number">
                {words.static}
              </th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{words.before}</th>
              <td class="number">{flowText(before)}</td>
              <td class="number">{staticText(before)}</td>
            </tr>
            <tr>
              <th scope="row">{words.after}</th>
              <td class="number">{after ? flowText(after) : words.none}</td>
              <td class="number">{after ? staticText(after) : words.none}</td>
            </tr>
          </tbody>
        </table>
      </ScrollRegion>
    </>
  );
}
