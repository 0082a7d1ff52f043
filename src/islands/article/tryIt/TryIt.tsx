import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { useEarlySlide } from '../../earlySlide.ts';
import { followUnits } from '../../opening.ts';
import type { Control } from './useAhead.ts';

interface Props {
  /** Begins the ids of its controls; one of each name a page. */
  readonly id: string;
  readonly controls: readonly Control[];
  /** The drawing for a column of so many px. */
  readonly draw: (width: number) => ComponentChildren;
  /** What the sliders make of it, in one sentence. */
  readonly said: string;
  readonly table: string;
  readonly lines: readonly LedgerLine[];
  readonly caption: string;
}

/**
 * A picture of an article that is moved by hand. It comes drawn, for a narrow and for a wide column, with its sliders where they
 * begin; what changes its height stands below them, so that nothing moves under the hand.
 */
export function TryIt({ id, controls, draw, said, table, lines, caption }: Props) {
  useEffect(followUnits, []);
  return (
    <figure class="picture try-it">
      <div class="wide">{draw(640)}</div>
      <div class="narrow">{draw(358)}</div>
      <div class="try-controls">
        {controls.map((control, i) => (
          <Turn key={control.name} id={`${id}-${i}`} {...control} />
        ))}
      </div>
      <p class="try-said" role="status">
        {said}
      </p>
      <Ledger caption={table} lines={lines} />
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

function Turn({ id, name, dial, place, text, tick, onPlace }: Control & { readonly id: string }) {
  useEarlySlide(id, onPlace);
  if (tick)
    return (
      <label class="switch">
        <input
          id={id}
          type="checkbox"
          autocomplete="off"
          checked={place === 1}
          onChange={(event) => onPlace(event.currentTarget.checked ? 1 : 0)}
        />
        {name}
      </label>
    );
  return (
    <div class="try-slide">
      <label for={id}>{name}</label>
      <span aria-hidden="true">{text}</span>
      <input
        id={id}
        class="slide"
        type="range"
        autocomplete="off"
        min={0}
        max={dial.stops.length - 1}
        step={1}
        value={place}
        aria-valuetext={text}
        onInput={(event) => onPlace(event.currentTarget.valueAsNumber)}
      />
    </div>
  );
}
