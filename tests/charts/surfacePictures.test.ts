import { describe, test } from 'vitest';
import { bandStrokes, ground, groundBoxes } from '../../src/charts/surface/ground.ts';
import { pointDrawing } from '../../src/charts/surface/point.ts';
import { sliceDrawing } from '../../src/charts/surface/slice.ts';
import { asText, drawnAsBefore } from './picture.ts';
import { type Asked, at, demoTable, listed, surface } from './surfaceSupport.ts';

function whole(asked: Asked): string {
  const { frame, bands, levels, scale, table, air, place } = surface(asked);
  const still = ground(frame, bands, scale);
  const moving = pointDrawing(frame, scale, { table, air, place, job: null }, groundBoxes(still, frame.letter));
  return asText(frame, { strokes: bandStrokes(frame, bands, levels), words: [] }, still, moving);
}

function slice(): string {
  const { scale, levels } = surface();
  const drawn = sliceDrawing({
    table: demoTable,
    along: 'outdoorDryBulb',
    air: listed,
    place: at(91, 62.6),
    scale,
    levels,
    system: 'ip',
    width: 358,
    measured: { value: 8470, range: [7900, 9050] },
  });
  return asText(drawn, drawn);
}

const pictures: Readonly<Record<string, () => string>> = {
  'surface-total-ip': () => whole({ width: 820 }),
  'surface-ratio-si-narrow': () => whole({ width: 358, system: 'si', quantity: 'ratio' }),
  slice,
};

describe('the picture itself', () => {
  test.each(Object.keys(pictures))('%s is drawn as it was', (name) => {
    drawnAsBefore(name, pictures[name]!());
  });
});
