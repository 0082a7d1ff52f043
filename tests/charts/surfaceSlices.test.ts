import { describe, expect, test } from 'vitest';
import { boxOf, inside, touch } from '../../src/charts/box.ts';
import { type SliceOptions, sliceDrawing } from '../../src/charts/surface/slice.ts';
import { valueScale } from '../../src/charts/surface/valueScale.ts';
import { at, demoTable, listed, smallTable, surface, systems } from './surfaceSupport.ts';

const asked = [280, 358, 404].flatMap((width) =>
  systems.flatMap((system) =>
    (['outdoorDryBulb', 'enteringWetBulb'] as const).map((along) => ({ width, system, along })),
  ),
);

function slice(options: Partial<SliceOptions> & Pick<SliceOptions, 'width' | 'system' | 'along'>) {
  const { scale, levels } = surface({ system: options.system });
  const measured = { value: 8470, range: [7900, 9050] as const };
  return sliceDrawing({ table: demoTable, air: listed, place: at(91, 62.6), scale, levels, measured, ...options });
}

describe('a slice', () => {
  test.each(asked)('of $along at $width px in $system keeps its words apart and on the paper', (options) => {
    for (const place of [at(91, 62.6), at(77, 70), at(113, 58)]) {
      const { words, width, height, letter } = slice({ ...options, place });
      for (const one of words) {
        expect(inside(boxOf(one, letter), width + 1, height), one.text).toBe(true);
        for (const other of words)
          if (other !== one)
            expect(touch(boxOf(one, letter), boxOf(other, letter)), `${one.text}, ${other.text}`).toBe(false);
      }
    }
  });

  test('is dashed, as all that should be made; measured is thick, with its range hatched', () => {
    const { strokes } = slice({ width: 358, system: 'ip', along: 'outdoorDryBulb' });
    const pens = strokes.map(({ pen }) => pen);
    for (const pen of ['line-should', 'line-measured', 'region', 'region-outside', 'dot']) expect(pens).toContain(pen);
    const alone = slice({ width: 358, system: 'ip', along: 'outdoorDryBulb', measured: null });
    expect(alone.strokes.map(({ pen }) => pen)).not.toContain('line-measured');
  });

  test('of a table with two rows is a straight line between them', () => {
    const { strokes } = slice({
      width: 358,
      system: 'ip',
      along: 'outdoorDryBulb',
      table: smallTable,
      air: {},
      measured: null,
    });
    const [x1, y1, ...rest] = [...strokes.find(({ pen }) => pen === 'line-should')!.d.matchAll(/-?[\d.]+/g)].map(
      Number,
    );
    const [x2, y2] = rest.slice(-2);
    for (let i = 0; i < rest.length; i += 2)
      expect(rest[i + 1]).toBeCloseTo(y1! + ((rest[i]! - x1!) * (y2! - y1!)) / (x2! - x1!), 0);
  });
});

describe('the scale of values', () => {
  test.each([280, 358, 472])('at %i px keeps every word on the paper', (width) => {
    for (const system of systems) {
      const { scale, levels } = surface({ system });
      const [low, high] = levels.range;
      for (const share of [0.02, 0.3, 0.5, 0.97]) {
        const table = low + share * (high - low);
        const drawn = valueScale({
          scale,
          levels,
          width,
          table,
          should: 0.98 * table,
          measured: { value: 0.9 * table, range: null },
        });
        for (const one of drawn.words)
          expect(inside(boxOf(one, drawn.letter), width + 1, drawn.height), one.text).toBe(true);
      }
    }
  });

  test('has only the marks that there are', () => {
    const { scale, levels } = surface();
    const none = valueScale({ scale, levels, width: 358, table: null, should: null, measured: null });
    expect(none.strokes.map(({ pen }) => pen)).not.toContain('dot');
    expect(none.words.map(({ text }) => text)).toEqual(
      levels.texts.filter((text) => none.words.some((one) => one.text === text)),
    );
  });
});
