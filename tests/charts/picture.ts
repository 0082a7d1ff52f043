/** Pictures as text: each is kept in `pictures`, and a changed one is written beside it, for the eye. */
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import type { Drawing } from '../../src/charts/shapes.ts';

const folder = fileURLToPath(new URL('./pictures/', import.meta.url));

/** A changed picture is kept beside the old one: move it over the old one if it is what was meant. */
export function drawnAsBefore(name: string, drawn: string): void {
  const file = `${folder}${name}.svg`;
  const changed = `${folder}${name}.changed.svg`;
  if (!existsSync(file)) {
    expect(process.env['CI'], `the picture ${name}.svg is missing`).toBeFalsy();
    writeFileSync(file, drawn);
  }
  const same = readFileSync(file, 'utf8') === drawn;
  if (same) rmSync(changed, { force: true });
  else writeFileSync(changed, drawn);
  expect(same, `${name}.svg has changed: look at ${name}.changed.svg`).toBe(true);
}

/** A drawing as text, a line an element. Its classes are those of the line language, so a viewer shows its shapes only. */
export function asText(size: { width: number; height: number }, ...drawings: readonly Drawing<string>[]): string {
  const strokes = drawings.flatMap((one) => one.strokes).map(({ pen, d }) => `<path class="${pen}" d="${d}"/>`);
  const words = drawings
    .flatMap((one) => one.words)
    .map(({ text, x, y, anchor, weight }) => `<text class="${anchor} ${weight}" x="${x}" y="${y}">${text}</text>`);
  const { width, height } = size;
  const open = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" fill="none" stroke="#000">`;
  return `${[open, ...strokes, ...words, '</svg>'].join('\n')}\n`;
}
