import { Shapes } from './Shapes.tsx';
import type { Drawing } from './shapes.ts';

/** A drawing as a picture of its own size, px, with what it says in words. */
export function Drawn({
  of: drawing,
  name,
}: {
  of: Drawing<string> & { readonly width: number; readonly height: number };
  name: string;
}) {
  return (
    <svg
      class="drawing"
      width={drawing.width}
      height={drawing.height}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      role="img"
      aria-label={name}
    >
      <Shapes of={drawing} />
    </svg>
  );
}
