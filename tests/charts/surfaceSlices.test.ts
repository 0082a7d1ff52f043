import { describe, expect, test } from 'vitest';
import { genericRating } from '../../src/calc/index.ts';
import { boxOf, inside, touch } from '../../src/charts/box.ts';
import { sliceDrawing } from '../../src/charts/surface/slice.ts';
import type { SliceOptions } from '../../src/charts/surface/sliceFrame.ts';
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

describe('a slice of published curves', () => {
  const curves = genericRating({ total: 9960, basis: 'net', blowerPower: 300, unit: 'airConditioner', stage: 'one' });
  const drawn = (quantity: 'total' | 'sensible') => {
    const { scale, levels } = surface({ table: curves, quantity });
    const options = { width: 358, system: 'ip', along: 'outdoorDryBulb', table: curves, scale, levels } as const;
    return slice({ ...options, air: { ...listed, dryAirFlow: curves.axes.dryAirFlow[0]! }, measured: null });
  };

  test('has its band hatched the other way than what is measured, as wide as the curves admit', () => {
    const { strokes } = drawn('total');
    expect(strokes.map(({ pen }) => pen)).toContain('region-should');
    const heights = (pen: string) =>
      [...strokes.find((one) => one.pen === pen)!.d.matchAll(/[ML]-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => Number(y));
    const line = heights('line-should');
    const band = heights('region-should');
    expect(Math.min(...band)).toBeLessThan(Math.min(...line));
    expect(Math.max(...band)).toBeGreaterThan(Math.max(...line));
  });

  test('has none for the sensible capacity, whose band is another', () => {
    expect(drawn('sensible').strokes.map(({ pen }) => pen)).not.toContain('region-should');
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
          estimated: false,
          should: 0.98 * table,
          measured: { value: 0.9 * table, range: [0.8 * table, 1.01 * table] },
        });
        for (const one of drawn.words)
          expect(inside(boxOf(one, drawn.letter), width + 1, drawn.height), one.text).toBe(true);
      }
    }
  });

  test('says which it is, a table or published curves, and between what the measured lies', () => {
    const { scale, levels } = surface();
    const measured = { value: 8470, range: [7911, 9049] as const };
    const said = (estimated: boolean) =>
      valueScale({ scale, levels, width: 472, table: 9260, estimated, should: null, measured }).words.map(({ text }) =>
        text.replaceAll('\u00a0', ' '),
      );
    expect(said(false)).toContain('in the table 31,600 Btu/h');
    expect(said(true)).toContain('by the curves 31,600 Btu/h');
    expect(said(true)).toContain('between 26,900 and 30,900 Btu/h');
  });

  test('has only the marks that there are', () => {
    const { scale, levels } = surface();
    const none = valueScale({ scale, levels, width: 358, table: null, estimated: false, should: null, measured: null });
    expect(none.strokes.map(({ pen }) => pen)).not.toContain('dot');
    expect(none.words.map(({ text }) => text)).toEqual(
      levels.texts.filter((text) => none.words.some((one) => one.text === text)),
    );
  });
});
