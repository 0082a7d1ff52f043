import { useEffect, useState } from 'preact/hooks';
import { format, formatNumber, unitLabel } from '~/job/format.ts';
import { displayUnit, fromSi, toSi } from '~/job/units.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { Slide, slideId } from '~/parts/Slide.tsx';
import { factorsAt as words } from '~/words/en/factorsAt.ts';
import { useEarlySlide } from '../earlySlide.ts';
import { system } from '../jobStore.ts';
import { followUnits } from '../opening.ts';
import { capacityText } from '../show.ts';
import { compareAt, parts } from './compare.ts';

/** How high the slider goes, m, and its step in the unit that is shown. */
const highest = 3048;
const steps = { ip: 100, si: 25 } as const;

/** The three factors against the exact result, at a height that is moved. */
export function FactorsAt() {
  const [height, setHeight] = useState(1524);
  const [typed, setTyped] = useState<string | null>(null);
  useEffect(followUnits, []);
  const unit = displayUnit.length[system.value];
  const shown = formatNumber(fromSi(height, unit), 0);
  const max = Math.round(fromSi(highest, unit));
  const isBad = typed !== null && read(typed, max) === null;
  const type = (text: string) => {
    setTyped(text);
    const value = read(text, max);
    if (value !== null) setHeight(toSi(value, unit));
  };
  const slide = (value: number) => {
    setTyped(null);
    setHeight(toSi(value, unit));
  };
  useEarlySlide(slideId('factors-height'), slide);
  const compared = compareAt(height);
  return (
    <div class="factors-at">
      <Slide
        id="factors-height"
        name={words.height}
        text={typed ?? shown}
        value={Math.round(fromSi(height, unit))}
        unit={unitLabel(unit)}
        min={0}
        max={max}
        step={steps[system.value]}
        problem={isBad ? words.problem(formatNumber(max, 0), unitLabel(unit)) : null}
        onText={type}
        onBlur={() => !isBad && setTyped(null)}
        onSlide={slide}
      />
      <ScrollRegion label={words.table}>
        <table class="ledger whole-words">
          <caption class="spoken">{words.table}</caption>
          <thead>
            <tr>
              <td />
              <th scope="col" class="number">
                {words.rule}
              </th>
              <th scope="col" class="number">
                {words.exact}
              </th>
              <th scope="col" class="number">
                {words.off}
              </th>
            </tr>
          </thead>
          <tbody>
            {parts.map((part) => {
              const { rule, exact } = compared[part];
              return (
                <tr key={part}>
                  <th scope="row">{words.parts[part]}</th>
                  <td class="number">{capacityText(rule)}</td>
                  <td class="number">{capacityText(exact)}</td>
                  <td class="number">{words.percentOff(format(rule / exact - 1, 'percent', 1))}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollRegion>
      <p role="status">
        {words.said(shown, unitLabel(unit), format(compared.total.rule / compared.total.exact - 1, 'percent', 0))}
      </p>
    </div>
  );
}

/** A height that may be typed; `null` for any other text. */
function read(text: string, max: number): number | null {
  const number = Number(text.replace(/,(?=\d{3}\b)/g, '').replace(',', '.'));
  return text.trim() !== '' && number >= 0 && number <= max ? number : null;
}
