import { describe, expect, test } from 'vitest';
import { type MoistAir, moistAir, saturationHumidityRatio } from '../../src/calc/index.ts';
import { allFamilies, type ChartLine, chartLines, type LineFamily } from '../../src/charts/moistAir/families.ts';
import { type ChartFrame, chartFrame } from '../../src/charts/moistAir/frame.ts';
import { pointsOf } from '../../src/charts/moistAir/process.ts';
import { pathOf } from '../../src/charts/shapes.ts';
import { cooling, pointsOfPath, pressures, read, systems } from './moistAirSupport.ts';

const properties: Readonly<Record<LineFamily, keyof MoistAir>> = {
  saturation: 'relativeHumidity',
  relativeHumidity: 'relativeHumidity',
  wetBulb: 'wetBulb',
  enthalpy: 'enthalpy',
  specificVolume: 'specificVolume',
  dryBulb: 'dryBulb',
  humidityRatio: 'humidityRatio',
};

/** A place on the paper as air; up to a quarter of a pixel above saturation it counts as saturated. */
function airOn(frame: ChartFrame, x: number, y: number): MoistAir | null {
  const { dryBulb, humidityRatio } = read(frame, x, y);
  const most = saturationHumidityRatio(dryBulb, frame.pressure);
  const pixel = (frame.humidityRatio[1] - frame.humidityRatio[0]) / (frame.plot.bottom - frame.plot.top);
  if (humidityRatio > most + 0.25 * pixel || humidityRatio < -0.25 * pixel) return null;
  return moistAir({ dryBulb, humidityRatio: Math.max(0, Math.min(humidityRatio, most)), pressure: frame.pressure });
}

/** How far a place is from the curve on which the property has a value: what is missing, over its slope on the paper. */
function distance(frame: ChartFrame, { family, value }: ChartLine, x: number, y: number): number {
  // At 0 °C two wet bulbs fit one humidity ratio, over water and over ice: there the line is looked at the other way round.
  if (family === 'wetBulb' && value === 0) return offFreezing(frame, x, y);
  const property = properties[family];
  const here = airOn(frame, x, y);
  if (!here) return Number.POSITIVE_INFINITY;
  const slope = (dx: number, dy: number) => {
    const [one, other] = [airOn(frame, x + dx, y + dy), airOn(frame, x - dx, y - dy)];
    if (one && other) return (one[property] - other[property]) / 2;
    return (one ?? other) ? Math.abs((one ?? other)![property] - here[property]) : 0;
  };
  return Math.abs(here[property] - value) / Math.hypot(slope(1, 0), slope(0, 1));
}

/** How far a place is from the humidity ratio of air with a wet bulb of 0 °C, upright on the paper, px. */
function offFreezing(frame: ChartFrame, x: number, y: number): number {
  // A tenth of a pixel to the left, because the rounded end of the line may lie beyond perfectly dry air.
  const { dryBulb, humidityRatio } = read(frame, x - 0.1, y);
  const { humidityRatio: W } = moistAir({ dryBulb: Math.max(0, dryBulb), wetBulb: 0, pressure: frame.pressure });
  const [dry, damp] = frame.humidityRatio;
  return (Math.abs(W - humidityRatio) / (damp - dry)) * (frame.plot.bottom - frame.plot.top);
}

/** The corners of the drawn path and three places on every chord between them. */
function placesOn(line: ChartLine): [number, number][] {
  const corners = pointsOfPath(pathOf(line.points));
  return corners.flatMap(([x, y], i) => {
    const [nextX, nextY] = corners[i + 1] ?? [x, y];
    return [0, 0.25, 0.5, 0.75].map((share): [number, number] => [x + share * (nextX - x), y + share * (nextY - y)]);
  });
}

const wide = systems.flatMap((system) =>
  [...pressures, 101325].flatMap((pressure) => [
    { system, pressure, view: 'whole' as const },
    { system, pressure, view: 'process' as const },
  ]),
);

describe.each(wide)('lines at 1440 px, $system, $pressure Pa, $view', ({ system, pressure, view }) => {
  const frame = chartFrame({ system, pressure, view, width: 1440, around: pointsOf(cooling(pressure)) });
  const lines = chartLines(frame, allFamilies);

  test.each(Object.keys(properties) as LineFamily[])(
    '%s lies within half a pixel of where its property holds',
    (family) => {
      const own = lines.filter((line) => line.family === family);
      expect(own.length).toBeGreaterThan(0);
      const worst = own.flatMap((line) => placesOn(line).map(([x, y]) => distance(frame, line, x, y)));
      expect(worst.length).toBeGreaterThan(own.length * 4);
      expect(Math.max(...worst)).toBeLessThan(0.5);
    },
  );

  test('no line leaves the plot', () => {
    const { left, right, top, bottom } = frame.plot;
    for (const [x, y] of lines.flatMap(placesOn)) {
      expect(x).toBeGreaterThanOrEqual(left - 0.05);
      expect(x).toBeLessThanOrEqual(right + 0.05);
      expect(y).toBeGreaterThanOrEqual(top - 0.05);
      expect(y).toBeLessThanOrEqual(bottom + 0.05);
    }
  });

  test('every line goes on to the frame or to saturation', () => {
    const { left, right, top, bottom } = frame.plot;
    for (const line of lines) {
      for (const [x, y] of [line.points[0]!, line.points.at(-1)!]) {
        const toFrame = Math.min(...[x - left, right - x, y - top, bottom - y].map(Math.abs));
        const { dryBulb, humidityRatio } = read(frame, x, y);
        const most = saturationHumidityRatio(dryBulb, pressure);
        const [dry, damp] = frame.humidityRatio;
        const toSaturation = (Math.abs(most - humidityRatio) / (damp - dry)) * (bottom - top);
        expect(Math.min(toFrame, toSaturation), `${line.family} ${line.label}`).toBeLessThan(0.3);
      }
    }
  });

  test('the values are round in the unit of the chart', () => {
    for (const { family, label } of lines) {
      const number = Number(label.split('\u00a0')[0]!.replace(/,/g, '').replace('−', '-'));
      const decimals = family === 'specificVolume' ? 3 : 1;
      expect(number, `${family} ${label}`).toBeCloseTo(Number(number.toFixed(decimals)), 9);
      expect(String(Math.abs(number))).toMatch(/^(\d+|\d*\.\d{1,3})$/);
    }
  });
});

describe('chartLines', () => {
  const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820 });

  test('draws only the families that are asked for, whatever their order', () => {
    const some = chartLines(frame, ['wetBulb', 'saturation']);
    expect(new Set(some.map(({ family }) => family))).toEqual(new Set(['saturation', 'wetBulb']));
    expect(chartLines(frame, ['saturation', 'wetBulb'])).toEqual(some);
    expect(chartLines(frame, [])).toEqual([]);
  });

  test('has nine lines of relative humidity, from 10 to 90 %', () => {
    const own = chartLines(frame, ['relativeHumidity']);
    expect(own.map(({ label }) => label)).toEqual(
      ['10', '20', '30', '40', '50', '60', '70', '80', '90'].map((n) => `${n}\u00a0%`),
    );
  });

  test('gives wet bulbs in steps of 5 °F, and volumes in cubic feet a pound', () => {
    const own = chartLines(frame, ['wetBulb', 'specificVolume']).map(({ label }) => label);
    expect(own).toContain('65\u00a0°F');
    expect(own).toContain('13.6\u00a0ft³/lb');
  });
});
