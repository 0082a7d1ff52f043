import { useEffect, useRef, useState } from 'preact/hooks';
import { Check } from '~/parts/Echo.tsx';
import { figureWords } from '~/words/en/figures.ts';
import { type HeldPhoto, photo, putAway } from './photo.ts';
import { panned, type View, wholeView, zoomed } from './photoView.ts';

/** Width and height of the window in units of its drawing. */
const shown = { width: 358, height: 216 } as const;
const middle = [0.5, 0.5] as const;
const step = 1.5;
const nudge = 0.15;

/** The picture above the cells: moved and enlarged with fingers, keys or the buttons below it. */
export function Photo() {
  const held = photo.value;
  useEffect(() => putAway, []);
  if (held === null) return null;
  if (held === 'unreadable') return <Check>{figureWords.photoUnreadable}</Check>;
  return <Held key={held.url} held={held} />;
}

function Held({ held }: { held: HeldPhoto }) {
  const [view, setView] = useState<View>(() => wholeView(held, shown.height / shown.width));
  const fingers = useRef(new Map<number, readonly [number, number]>());
  const zoom = (by: number, at: readonly [number, number] = middle) => setView((now) => zoomed(now, by, at, held));
  const pan = (across: number, down: number) => setView((now) => panned(now, across, down, held));
  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => pan(-nudge, 0),
    ArrowRight: () => pan(nudge, 0),
    ArrowUp: () => pan(0, -nudge),
    ArrowDown: () => pan(0, nudge),
    '+': () => zoom(step),
    '=': () => zoom(step),
    '-': () => zoom(1 / step),
    '0': () => setView(wholeView(held, shown.height / shown.width)),
  };
  const move = (event: PointerEvent) => {
    const before = [...fingers.current.values()];
    if (!fingers.current.has(event.pointerId)) return;
    fingers.current.set(event.pointerId, placeIn(event));
    const after = [...fingers.current.values()];
    pan(meanOf(before, 0) - meanOf(after, 0), meanOf(before, 1) - meanOf(after, 1));
    if (after.length > 1) zoom(spread(after) / spread(before), [meanOf(after, 0), meanOf(after, 1)]);
  };
  const lift = (event: PointerEvent) => void fingers.current.delete(event.pointerId);
  return (
    <div class="photo">
      <svg
        class="photo-window"
        width="100%"
        viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`}
        role="application"
        aria-roledescription={figureWords.photoKind}
        aria-label={figureWords.photoName}
        tabindex={0}
        onKeyDown={(event) => {
          const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
          if (!act) return;
          event.preventDefault();
          act();
        }}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          fingers.current.set(event.pointerId, placeIn(event));
        }}
        onPointerMove={move}
        onPointerUp={lift}
        onPointerCancel={lift}
      >
        <image href={held.url} width={held.width} height={held.height} />
      </svg>
      <div class="tools">
        <button type="button" class="unit-key" aria-label={figureWords.larger} onClick={() => zoom(step)}>
          +
        </button>
        <button type="button" class="unit-key" aria-label={figureWords.smaller} onClick={() => zoom(1 / step)}>
          −
        </button>
        <button type="button" class="plain-button" onClick={putAway}>
          {figureWords.putAway}
        </button>
        <small class="quiet">{figureWords.notStored}</small>
      </div>
    </div>
  );
}

/** Where a finger is, as shares of the window. */
function placeIn(event: PointerEvent): readonly [number, number] {
  const { left, top, width, height } = (event.currentTarget as Element).getBoundingClientRect();
  return [(event.clientX - left) / width, (event.clientY - top) / height];
}

type Places = readonly (readonly [number, number])[];

const meanOf = (places: Places, axis: 0 | 1) => places.reduce((sum, place) => sum + place[axis], 0) / places.length;

/** How far apart two fingers are; never nothing, so that the ratio of two of them is a number. */
function spread([first, second]: Places): number {
  if (!first || !second) return 1;
  return Math.max(0.01, Math.hypot(first[0] - second[0], ((first[1] - second[1]) * shown.height) / shown.width));
}
