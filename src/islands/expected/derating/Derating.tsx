import { useEffect, useRef } from 'preact/hooks';
import { Drawn } from '~/charts/Drawn.tsx';
import { ledgerDrawing } from '~/charts/derating/ledger.ts';
import type { Measured } from '~/charts/surface/sliceFrame.ts';
import { derating } from '~/words/en/derating.ts';
import { changeText, fineText } from '../../fine.ts';
import { system } from '../../jobStore.ts';
import { capacityText, inUnitOf, joined } from '../../show.ts';
import { useWidth } from '../../useWidth.ts';
import { inputs, isMoved, isOutside, measured, nominal, ownTotal, putBack, total } from './model.ts';
import { rowsOf, share, unitName } from './rows.ts';
import { StepList } from './StepList.tsx';

/** From the nameplate to what this system should make here and now, each step to be seen, left out and tried. */
export function Derating() {
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    // The section was not there yet when the page was asked for it, and what stands above it is drawn in the next frame.
    if (location.hash !== '#why-not') return;
    requestAnimationFrame(() => requestAnimationFrame(() => section.current?.scrollIntoView()));
  }, []);
  const [now, was] = [total.value, ownTotal.value];
  if (now === null || was === null) return null;
  return (
    <section class="derating wide-part" id="why-not" ref={section} aria-labelledby="why-not-head">
      <div class="derating-head">
        <h2 id="why-not-head">{titleText()}</h2>
        <p>
          {nominal.value === null
            ? derating.sayPlain(capacityText(was))
            : derating.say(nominalText(nominal.value), capacityText(was))}{' '}
          {derating.faults}
        </p>
      </div>
      <div class="derating-picture">
        <Picture />
        <p class="derating-tried" role="status">
          {isMoved.value && derating.triedSay(fineText(now), fineText(was), changeText(now - was))}
        </p>
        {isOutside.value && <p class="note">{derating.outside}</p>}
        <p class="tools">
          <button type="button" class="plain-button" disabled={!isMoved.value} onClick={putBack}>
            {derating.reset}
          </button>
        </p>
      </div>
      <StepList />
    </section>
  );
}

const nominalText = (watts: number) =>
  joined(inUnitOf(watts, system.value === 'ip' ? 'btuh' : 'kw', system.value === 'ip' ? 0 : 1));

function titleText(): string {
  if (nominal.value !== null) return derating.whyNot(nominalText(nominal.value));
  return inputs.value?.certified === null ? derating.fromTable : derating.plain;
}

/** A measured figure as a share of the first, the ends of its range rounded outward to whole per cents. */
function measuredText({ value, range }: Measured, first: number): string {
  const said = share(value / first);
  if (!range) return derating.measured(said);
  const [low, high] = range;
  return derating.measuredBetween(said, Math.floor((100 * low) / first), Math.ceil((100 * high) / first));
}

function Picture() {
  const [box, width] = useWidth();
  const rows = rowsOf();
  const [first, last] = [rows[0], rows.at(-1)];
  if (!first || !last) return null;
  const of = (watts: number) => share(watts / first.value);
  const drawing =
    width > 0
      ? ledgerDrawing({
          rows,
          width: Math.min(width, 860),
          unit: unitName(),
          should: (isMoved.value ? derating.triedTotal : derating.should)(of(last.value)),
          measured: measured.value && { value: measured.value.value, text: measuredText(measured.value, first.value) },
          range: measured.value?.range ?? null,
        })
      : null;
  return (
    <div ref={box} class="derating-room">
      {drawing && (
        <Drawn of={drawing} name={derating.ledger(`${first.amount} ${unitName()}`, `${last.amount} ${unitName()}`)} />
      )}
    </div>
  );
}
