import { describe, expect, test } from 'vitest';
import { allFamilies, chartLines, type Family, firstFamilies } from '../../src/charts/moistAir/families.ts';
import { type ChartFrame, chartFrame } from '../../src/charts/moistAir/frame.ts';
import { ground } from '../../src/charts/moistAir/ground.ts';
import { pointsOf } from '../../src/charts/moistAir/process.ts';
import { processBoxes, processDrawing } from '../../src/charts/moistAir/processDrawing.ts';
import { processWords } from '../../src/charts/moistAir/processWords.ts';
import type { Word } from '../../src/charts/shapes.ts';
import { charts, cooling, type Told } from './moistAirSupport.ts';

type Corner = readonly [x: number, y: number];

/** The corners of a text: 0.56 em a character, as high as its letters, turned about its anchor. */
function corners({ text, x, y, anchor, angle }: Word, letter: number): Corner[] {
  const width = 0.56 * letter * text.length;
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const turn = (angle * Math.PI) / 180;
  const box: Corner[] = [
    [left, -letter / 2],
    [left + width, -letter / 2],
    [left + width, letter / 2],
    [left, letter / 2],
  ];
  return box.map(([a, b]) => [
    x + a * Math.cos(turn) - b * Math.sin(turn),
    y + a * Math.sin(turn) + b * Math.cos(turn),
  ]);
}

/** Two convex shapes lie apart if there is a line between them along a side of either. */
function apart(a: readonly Corner[], b: readonly Corner[]): boolean {
  return [a, b].some((shape) =>
    shape.some(([x1, y1], i) => {
      const [x2, y2] = shape[(i + 1) % shape.length]!;
      const across = ([x, y]: Corner) => (x - x1) * (y2 - y1) - (y - y1) * (x2 - x1);
      const [p, q] = [a.map(across), b.map(across)];
      return Math.max(...p) <= Math.min(...q) || Math.max(...q) <= Math.min(...p);
    }),
  );
}

function collisions(words: readonly Word[], letter: number): string[] {
  const boxes = words.map((word) => corners(word, letter));
  return words.flatMap((a, i) =>
    words.slice(i + 1).flatMap((b, j) => (apart(boxes[i]!, boxes[i + 1 + j]!) ? [] : [`${a.text} on ${b.text}`])),
  );
}

function outside(words: readonly Word[], { width, height, letter }: ChartFrame): string[] {
  return words
    .filter((word) => corners(word, letter).some(([x, y]) => x < 0 || y < 0 || x > width || y > height))
    .map(({ text }) => text);
}

const fewest: Readonly<Record<Exclude<Family, 'grid' | 'saturation'>, number>> = {
  relativeHumidity: 3,
  wetBulb: 3,
  enthalpy: 2,
  specificVolume: 1,
};

describe.each(charts)('labels at $width px, $system, $pressure Pa', ({ width, system, pressure }) => {
  const whole = chartFrame({ system, pressure, width });

  test.each([
    ['first', firstFamilies],
    ['all', allFamilies],
  ] as const)('of the %s families do not touch one another and stand inside the drawing', (_, families) => {
    const lines = chartLines(whole, families);
    const { words } = ground(whole, lines);
    expect(collisions(words, 14)).toEqual([]);
    expect(outside(words, whole)).toEqual([]);
    for (const [family, least] of Object.entries(fewest)) {
      if (!families.includes(family as Family)) continue;
      const labelled = lines.filter((line) => line.family === family && line.labels.length > 0);
      expect(labelled.length, family).toBeGreaterThanOrEqual(least);
    }
  });

  test('of a process keep clear of one another and of the lines’, whole and close up', () => {
    const processes: Told[] = [
      cooling(pressure),
      cooling(pressure, { heat: 500, place: 'after coil' }),
      cooling(pressure, null, [
        [80, 0.6],
        [60, 0.92],
      ]),
      cooling(pressure, null, [
        [80, 0.2],
        [62, 0.34],
      ]),
      cooling(pressure, null, [
        [70, 0.5],
        [69, 0.5],
      ]),
    ];
    for (const process of processes) {
      for (const view of ['whole', 'process'] as const) {
        const frame = chartFrame({ system, pressure, width, view, around: pointsOf(process) });
        const told = processWords(system, process);
        const lines = chartLines(frame, firstFamilies, processBoxes(frame, process, told));
        const words = [...ground(frame, lines).words, ...processDrawing(frame, process, told).words];
        expect(collisions(words, 14)).toEqual([]);
        expect(outside(words, frame)).toEqual([]);
        expect(words.map(({ text }) => text)).toContain('Return air');
      }
    }
  });
});

describe('labels', () => {
  test('say what each family is, once, where there is room', () => {
    for (const width of [820, 1440]) {
      const frame = chartFrame({ system: 'ip', pressure: 101325, width });
      const texts = ground(frame, chartLines(frame, allFamilies)).words.map(({ text }) => text);
      for (const name of ['relative humidity', 'wet bulb', 'enthalpy', 'specific volume']) {
        expect(texts.filter((text) => text.includes(name)).length, `${name} at ${width}`).toBe(1);
      }
    }
  });

  test('grow in number with the width', () => {
    const count = (width: number) => {
      const frame = chartFrame({ system: 'si', pressure: 101325, width });
      return ground(frame, chartLines(frame, firstFamilies)).words.length;
    };
    expect(count(390)).toBeLessThan(count(820));
    expect(count(820)).toBeLessThanOrEqual(count(1440));
  });

  test('do not touch when they are shown large either', () => {
    for (const width of [820, 1440]) {
      const frame = chartFrame({ system: 'ip', pressure: 101325, width, letter: 21 });
      const { words } = ground(frame, chartLines(frame, allFamilies));
      expect(collisions(words, 21)).toEqual([]);
      expect(outside(words, frame)).toEqual([]);
    }
  });

  test('are never upside down', () => {
    const frame = chartFrame({ system: 'si', pressure: 84e3, width: 1440 });
    for (const { angle } of ground(frame, chartLines(frame, allFamilies)).words) {
      expect(Math.abs(angle)).toBeLessThanOrEqual(90);
    }
  });
});
