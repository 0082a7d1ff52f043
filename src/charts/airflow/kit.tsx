/**
 * The parts that the drawings of where to measure are put together from: one system lying on its side, air from left to right.
 * Everything is in px of a paper 344 wide.
 */
import type { ComponentChildren } from 'preact';

export const paper = { width: 344, height: 150 } as const;
/** Upper and lower wall of the ducts, and of the cabinet between them. */
export const duct = { top: 54, bottom: 98, middle: 76 } as const;
export const cabinet = { left: 86, right: 240, top: 42, bottom: 110 } as const;

interface SheetProps {
  readonly name: string;
  /** More than the system needs, where something stands under it. */
  readonly height?: number;
  readonly children: ComponentChildren;
}

export function Sheet({ name, height = paper.height, children }: SheetProps) {
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${paper.width} ${height}`} role="img" aria-label={name}>
      {children}
    </svg>
  );
}

/** The ducts on both sides and the cabinet between them. */
export function System() {
  const { top, bottom } = duct;
  const { left, right } = cabinet;
  return (
    <>
      <path class="outline" d={`M0 ${top}H${left}V${cabinet.top}H${right}V${top}H${paper.width}`} />
      <path class="outline" d={`M0 ${bottom}H${left}V${cabinet.bottom}H${right}V${bottom}H${paper.width}`} />
    </>
  );
}

/** An arrow in the stream, its tip at x. */
export function Air({ x, y = duct.middle }: { x: number; y?: number }) {
  return (
    <>
      <path class="line-scale" d={`M${x - 34} ${y}H${x - 8}`} />
      <path class="arrow" d={`M${x} ${y}l-10 -4v8z`} />
    </>
  );
}

/** The blower's wheel in its scroll. */
export function Blower({ x = 132 }: { x?: number }) {
  const y = duct.middle;
  return (
    <>
      <circle class="outline" cx={x} cy={y} r="15" />
      <path class="outline" d={`M${x + 26} ${y - 22}H${x}a22 22 0 1 0 22 22`} />
      <circle class="dot" cx={x} cy={y} r="2.5" />
    </>
  );
}

/** The coil, an A on its side, or a slab of heat. */
export function Coil({ x = 190 }: { x?: number }) {
  const { top, bottom } = cabinet;
  return (
    <path
      class="outline"
      d={`M${x + 32} ${top + 10}L${x} ${duct.middle}L${x + 32} ${bottom - 10}M${x + 38} ${top + 6}L${x + 8} ${duct.middle}L${x + 38} ${bottom - 6}`}
    />
  );
}

export function Heat({ x = 196 }: { x?: number }) {
  const { top, bottom } = cabinet;
  const step = (bottom - top - 16) / 6;
  const teeth = Array.from({ length: 6 }, (_, i) => `l${i % 2 === 0 ? 16 : -16} ${step}`).join('');
  return <path class="line-step" d={`M${x} ${top + 8}${teeth}`} />;
}

/** What stands in the filter's slot: a filter, or a plate full of holes. */
export function Slot({ plate = false, x = 96 }: { plate?: boolean; x?: number }) {
  const { top, bottom } = cabinet;
  const height = bottom - top - 8;
  return (
    <>
      <rect class="outline" x={x} y={top + 4} width="8" height={height} />
      {plate &&
        Array.from({ length: 6 }, (_, i) => (
          <circle key={i} class="dot" cx={x + 4} cy={top + 4 + (height * (i + 0.5)) / 6} r="2" />
        ))}
    </>
  );
}

/** A place with its name: a dot, a leader, and words at its end. */
export function Callout({
  at: [x, y],
  to: [toX, toY],
  anchor = 'start',
  mark,
  children,
}: {
  at: readonly [number, number];
  to: readonly [number, number];
  anchor?: 'start' | 'middle' | 'end';
  mark?: 'return' | 'supply';
  children: string;
}) {
  const words = toY < y ? toY - 5 : toY + 13;
  return (
    <>
      <path class="line-scale" d={`M${x} ${y}L${toX} ${toY}`} />
      {mark === 'return' ? (
        <circle class="mark-return" cx={x} cy={y} r="6" />
      ) : mark === 'supply' ? (
        <rect class="mark-supply" x={x - 5} y={y - 5} width="10" height="10" />
      ) : (
        <circle class="dot" cx={x} cy={y} r="3" />
      )}
      <text class={anchor === 'start' ? undefined : anchor} x={toX} y={words}>
        {children}
      </text>
    </>
  );
}

/** A dimension with oblique ends and its words above it. */
export function Dimension({ from, to, y, children }: { from: number; to: number; y: number; children: string }) {
  const end = (x: number) => `M${x - 4} ${y + 4}L${x + 4} ${y - 4}`;
  return (
    <>
      <path class="line-dimension" d={`M${from} ${y}H${to}`} />
      <path class="line-end" d={end(from) + end(to)} />
      <text class="middle" x={(from + to) / 2} y={y - 8}>
        {children}
      </text>
    </>
  );
}

/** A cross where nobody drills. */
export function Never({ x, y }: { x: number; y: number }) {
  return <path class="line-step" d={`M${x - 5} ${y - 5}l10 10M${x - 5} ${y + 5}l10 -10`} />;
}
