import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rated } from '../../src/calc/index.ts';
import { boxOf, inside, touch } from '../../src/charts/box.ts';
import { isPrinted } from '../../src/charts/surface/cell.ts';
import { surfaceFrame } from '../../src/charts/surface/frame.ts';
import { ground, groundBoxes, tickWords } from '../../src/charts/surface/ground.ts';
import { pointDrawing } from '../../src/charts/surface/point.ts';
import { quantitiesIn, readTable } from '../../src/charts/surface/reading.ts';
import { inkOf, levelsOf, scaleOf } from '../../src/charts/surface/scale.ts';
import { at, between, demoTable, listed, placeUnder, smallTable, surface, systems, widths } from './surfaceSupport.ts';

const surfaces = widths.flatMap((width) => systems.map((system) => ({ width, system })));

describe('contours', () => {
  test.each(surfaces)('at $width px in $system, every point of a contour reads its level in the table', (asked) => {
    const { frame, bands, table, air } = surface(asked);
    for (const { value, pieces } of bands.lines) {
      for (const point of pieces.flat()) {
        const { total } = rated(table, { ...placeUnder(frame, point), ...air }, { beyond: 'extend' });
        // A twentieth of a pixel is left out of straight lines; no slope of this table is above 100 W a pixel.
        expect(Math.abs(total! - value), `${value}`).toBeLessThan(6);
      }
    }
    expect(bands.lines.flatMap(({ pieces }) => pieces).length).toBeGreaterThan(3);
  });

  test('lie inside the table, and go from edge to edge of it', () => {
    const { frame, bands } = surface();
    const { left, right, top, bottom } = frame.inner;
    for (const { pieces } of bands.lines) {
      for (const piece of pieces) {
        for (const [x, y] of piece) {
          expect(x).toBeGreaterThanOrEqual(left - 1e-6);
          expect(x).toBeLessThanOrEqual(right + 1e-6);
          expect(y).toBeGreaterThanOrEqual(top - 1e-6);
          expect(y).toBeLessThanOrEqual(bottom + 1e-6);
        }
        for (const [x, y] of [piece[0]!, piece.at(-1)!]) {
          const off = Math.min(...[x - left, right - x, y - top, bottom - y].map(Math.abs));
          expect(off).toBeLessThan(0.2);
        }
      }
    }
  });

  test.each(surfaces)('at $width px in $system, each has its level written outside the table', (asked) => {
    const { frame, bands, scale } = surface(asked);
    const words = ground(frame, bands, scale).words;
    for (const { text, pieces } of bands.lines) {
      if (pieces.length === 0) continue;
      const label = words.find((one) => one.text === text);
      expect(label, text).toBeDefined();
      const { left, right, top, bottom } = frame.inner;
      expect(label!.x > left && label!.x < right && label!.y > top && label!.y < bottom, text).toBe(false);
    }
  });

  test('leave a hole of the table blank, and run along none of its edges', () => {
    const missing = { ...demoTable, total: demoTable.total.map((figure, i) => (i === 9 ? null : figure)) };
    const { frame, bands, field } = surface({ table: missing });
    expect(bands.holes.length).toBeGreaterThan(0);
    const middle = bands.holes[0]!.reduce(([x, y], [a, b]) => [x + a / 4, y + b / 4] as const, [0, 0] as const);
    expect(field(placeUnder(frame, middle))).toBeNaN();
  });
});

describe('words of a surface', () => {
  test.each(surfaces)('at $width px in $system, none touches another or leaves the paper', (asked) => {
    for (const place of [at(91, 62.6), at(76, 58), at(114, 71.5), at(95, 67)]) {
      const { frame, bands, scale, table, air } = surface({ ...asked, place });
      const still = ground(frame, bands, scale);
      const moving = pointDrawing(frame, scale, { table, air, place, job: null }, groundBoxes(still, frame.letter));
      const boxes = [...still.words, ...moving.words].map((one) => ({ one, box: boxOf(one, frame.letter) }));
      for (const { one, box } of boxes) {
        expect(inside(box, frame.width + 0.5, frame.height), one.text).toBe(true);
        for (const other of boxes)
          if (other.one !== one) expect(touch(box, other.box), `${one.text}, ${other.one.text}`).toBe(false);
      }
    }
  });

  test('are round on both scales in either system', () => {
    for (const system of systems) {
      const { ticks } = surfaceFrame({ table: demoTable, system, width: 820 });
      for (const { text } of [...ticks.outdoor, ...ticks.wetBulb]) expect(text).toMatch(/^\d+$/);
    }
    expect(surface({ system: 'ip' }).frame.ticks.wetBulb.map(({ text }) => text)).toEqual(['57', '62', '67', '72']);
    expect(surface({ system: 'si' }).frame.ticks.outdoor.map(({ text }) => text)).toEqual([
      '25',
      '30',
      '35',
      '40',
      '45',
    ]);
    expect(tickWords(surface().frame)).toHaveLength(9);
  });
});

describe('the place that is read', () => {
  const textsAt = (place = at(91, 62.6), air = listed, table = demoTable) => {
    const drawn = surface({ table, air, place });
    const { words, strokes } = pointDrawing(drawn.frame, drawn.scale, { table, air, place, job: null }, []);
    return { texts: words.map(({ text }) => text), strokes };
  };

  test('has its cell, the printed figures at its corners, and what it comes to', () => {
    const { texts, strokes } = textsAt();
    expect(texts).toEqual(
      expect.arrayContaining(['32.9', '31.3', '35.0', '33.2', '91', '62.6', 'between four figures']),
    );
    expect(texts.some((text) => /^here and now, 32,\d00\u00a0Btu\/h$/.test(text))).toBe(true);
    expect(strokes.some(({ pen }) => pen === 'outline blank')).toBe(true);
  });

  test('has no frames around figures that are worked out from two blocks', () => {
    const { texts, strokes } = textsAt(at(91, 62.6), between);
    expect(texts).toContain('between eight figures');
    expect(strokes.some(({ pen }) => pen === 'outline blank')).toBe(false);
    expect(isPrinted(demoTable, scaleOf('sensible', 'ip'), { ...listed, enteringDryBulb: 20 })).toBe(false);
  });

  test('outside the table says so', () => {
    expect(textsAt(at(118, 62.6)).texts).toContain('not in the table');
  });

  test('on a table of one cell is drawn as on any other', () => {
    const { texts } = textsAt(at(91, 63), { dryAirFlow: 0.6 }, smallTable);
    expect(texts).toContain('between four figures');
  });
});

describe('readTable', () => {
  test('gives the printed figures where they are printed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 3 }), (i, j) => {
        const place = {
          outdoorDryBulb: demoTable.axes.outdoorDryBulb[i]!,
          enteringWetBulb: demoTable.axes.enteringWetBulb[j]!,
        };
        const found = readTable(demoTable, place, listed)!;
        const printed = rated(demoTable, { ...place, ...listed }, { beyond: 'refuse' });
        expect(found.total).toBeCloseTo(printed.total!, 6);
        expect(found.sensible).toBeCloseTo(printed.sensible!, 6);
        expect(found.ratio).toBeCloseTo(Math.min(1, printed.sensible! / printed.total!), 6);
        expect([found.power, found.efficiency]).toEqual([null, null]);
      }),
    );
  });

  test('reads power and efficiency from a table that has power', () => {
    const powered = { ...demoTable, power: demoTable.total.map(() => 2500) };
    const found = readTable(powered, at(95, 67), listed)!;
    expect(found.power).toBe(2500);
    expect(found.efficiency).toBeCloseTo(found.total! / 2500, 9);
    expect(quantitiesIn(powered, listed)).toEqual(['total', 'sensible', 'ratio', 'power', 'efficiency']);
    expect(quantitiesIn(demoTable, between)).toEqual(['total', 'sensible', 'ratio']);
    expect(quantitiesIn(smallTable, {})).toEqual(['total']);
  });

  test('is null where there is nothing to read', () => {
    expect(readTable(demoTable, at(91, 62.6), {})).toBeNull();
    expect(readTable(demoTable, { outdoorDryBulb: Number.NaN, enteringWetBulb: 17 }, listed)).toBeNull();
  });
});

describe('levelsOf', () => {
  test('gives at most eleven round levels, which hold every figure between two of them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1000, max: 40000, noNaN: true }),
        fc.double({ min: 0, max: 20000, noNaN: true }),
        fc.constantFrom(...systems),
        (low, more, system) => {
          const { values, range } = levelsOf(scaleOf('total', system), [low, low + more]);
          expect(values.length).toBeGreaterThan(0);
          expect(values.length).toBeLessThanOrEqual(12);
          expect(range[0]).toBeLessThanOrEqual(low + 1e-6);
          expect(range[1]).toBeGreaterThanOrEqual(low + more - 1e-6);
        },
      ),
    );
  });

  test('goes from the least ink to the most, never back', () => {
    const levels = levelsOf(scaleOf('total', 'ip'), [7600, 11700]);
    const inks = Array.from({ length: levels.values.length + 1 }, (_, band) => inkOf(band, levels));
    expect(inks[0]).toBe(0);
    expect(inks.at(-1)).toBe(11);
    for (const [i, ink] of inks.slice(1).entries()) expect(ink).toBeGreaterThan(inks[i]!);
  });
});
