import { describe, expect, test } from 'vitest';
import { moistAir, saturationHumidityRatio } from '../../src/calc/index.ts';
import { type ChartFrame, chartFrame } from '../../src/charts/moistAir/frame.ts';
import { type ChartProcess, coilOnChart, pointsOf } from '../../src/charts/moistAir/process.ts';
import { processDrawing } from '../../src/charts/moistAir/processDrawing.ts';
import { processWords } from '../../src/charts/moistAir/processWords.ts';
import type { Pen } from '../../src/charts/shapes.ts';
import { cooling, pointsOfPath, read } from './moistAirSupport.ts';

const frameOf = (process: ChartProcess, width = 820) =>
  chartFrame({ system: 'ip', pressure: process.entering.pressure, width, view: 'process', around: pointsOf(process) });

const draw = (process: ChartProcess, frame: ChartFrame = frameOf(process)) =>
  processDrawing(frame, process, processWords(frame.system, process));

const paths = (process: ChartProcess, pen: Pen, frame?: ChartFrame) =>
  draw(process, frame)
    .strokes.filter((stroke) => stroke.pen === pen)
    .map(({ d }) => d);

/** Ends of the only straight line drawn with a pen. */
function ends(process: ChartProcess, pen: Pen) {
  const [d, ...more] = paths(process, pen);
  expect(more).toEqual([]);
  const [from, to] = pointsOfPath(d!);
  return [from!, to!] as const;
}

const after = { heat: 500, place: 'after coil' } as const;
const before = { heat: 500, place: 'before coil' } as const;
/** 500 W in 0.66 kg/s of dry air with about 8.4 g of water a kilogram: 500/(0.66·(1006 + 1860·0.0084)) K. */
const rise = 0.7414;

describe('a process on the chart', () => {
  test('goes straight from return to supply, with an arrow head at 60 % of the way', () => {
    const process = cooling(101325);
    const frame = frameOf(process);
    const [from, to] = ends(process, 'line-measured');
    expect(read(frame, ...from).dryBulb).toBeCloseTo(process.entering.dryBulb, 1);
    expect(read(frame, ...to).humidityRatio).toBeCloseTo(process.leaving.humidityRatio, 4);
    const head = pointsOfPath(paths(process, 'arrow')[0]!);
    const middle = head.reduce((sum, [x]) => sum + x / head.length, 0);
    expect(Math.abs(middle - (from[0] + 0.6 * (to[0] - from[0])))).toBeLessThan(3);
    expect(head[0]![0]).toBeLessThan(head[1]![0]);
  });

  test('is carried on, dashed and straight, to saturation at the apparatus dew point', () => {
    const process = cooling(101325);
    const frame = frameOf(process);
    const [from, to] = ends(process, 'line-beyond');
    const met = read(frame, ...to);
    expect(met.dryBulb).toBeCloseTo(process.load.apparatus!.dewPoint, 1);
    expect(met.humidityRatio).toBeCloseTo(saturationHumidityRatio(met.dryBulb, 101325), 4);
    const [start] = ends(process, 'line-measured');
    const slope = (start[1] - from[1]) / (start[0] - from[0]);
    expect(from[1] + slope * (to[0] - from[0])).toBeCloseTo(to[1], -0.3);
  });

  test('shows the bypass factor as the share of the coil’s line that is dashed', () => {
    for (const blower of [null, after, before]) {
      const process = cooling(101325, blower);
      const [from, to] = ends(process, 'line-beyond');
      const [start, end] = ends(process, 'line-measured');
      expect(end).toEqual(from);
      const share = Math.abs(from[0] - to[0]) / Math.abs(start[0] - to[0]);
      expect(share).toBeCloseTo(process.load.apparatus!.bypassFactor, 2);
    }
  });

  test('has the heat of a blower after the coil as a step of its own, level and to the warmer side', () => {
    const process = cooling(101325, after);
    const frame = frameOf(process);
    const [from, to] = ends(process, 'line-step');
    expect(from[1]).toBeCloseTo(to[1], 1);
    expect(read(frame, ...to).dryBulb - read(frame, ...from).dryBulb).toBeCloseTo(rise, 1);
    expect(read(frame, ...to).dryBulb).toBeCloseTo(process.leaving.dryBulb, 1);
  });

  test('has the heat of a blower before the coil before it', () => {
    const process = cooling(101325, before);
    const frame = frameOf(process);
    const [from, to] = ends(process, 'line-step');
    expect(read(frame, ...from).dryBulb).toBeCloseTo(process.entering.dryBulb, 1);
    expect(read(frame, ...to).dryBulb - read(frame, ...from).dryBulb).toBeCloseTo(rise, 1);
  });

  test('has no such step when the blower stands outside the probes, or nothing is known of it', () => {
    expect(paths(cooling(101325), 'line-step')).toEqual([]);
    expect(paths(cooling(101325, { heat: 500, place: 'outside probes' }), 'line-step')).toEqual([]);
  });

  test('measures the sensible leg along and the latent leg up', () => {
    const process = cooling(101325, null, [
      [80, 0.6],
      [60, 0.92],
    ]);
    const frame = frameOf(process);
    const legs = paths(process, 'line-dimension').map((d) => pointsOfPath(d).map(([x, y]) => read(frame, x, y)));
    const [sensible, bypass, latent] = legs;
    expect(sensible!.map(({ dryBulb }) => dryBulb)).toEqual([
      expect.closeTo(process.leaving.dryBulb, 1),
      expect.closeTo(process.entering.dryBulb, 1),
    ]);
    expect(bypass![0]!.dryBulb).toBeCloseTo(process.load.apparatus!.dewPoint, 1);
    expect(latent!.map(({ humidityRatio }) => humidityRatio)).toEqual([
      expect.closeTo(process.entering.humidityRatio, 4),
      expect.closeTo(process.leaving.humidityRatio, 4),
    ]);
  });

  test('says at the legs what the load says', () => {
    const process = cooling(101325);
    const words = draw(process)
      .words.map(({ text }) => text)
      .join(' ');
    expect(words).toMatch(/Return air 75\.0\u00a0°F, 50\u00a0%/);
    expect(words).toMatch(/Supply air 56\.0\u00a0°F, 88\u00a0%/);
    expect(words).toMatch(/cooling \(sensible\) 24,300\u00a0Btu\/h/);
    expect(words).toMatch(/drying \(latent\) 4,900\u00a0Btu\/h/);
    expect(words).toMatch(/bypass factor 0\.18/);
    expect(words).toMatch(/Coil.*51\.9\u00a0°F/);
  });

  test('has a hatched region for each reading whose uncertainty is known, and none otherwise', () => {
    expect(paths(cooling(101325), 'region').length).toBe(2);
    const { uncertainty: _, ...bare } = cooling(101325);
    expect(paths(bare, 'region')).toEqual([]);
    expect(paths({ ...bare, uncertainty: { entering: cooling(101325).uncertainty!.entering } }, 'region').length).toBe(
      1,
    );
  });

  test('is drawn without a load: the line and the names, no figures at the legs', () => {
    const { load: _, ...bare } = cooling(101325);
    const words = draw(bare).words.map(({ text }) => text);
    expect(words).toContain('Return air');
    expect(words.some((text) => text.includes('Btu/h'))).toBe(false);
  });

  test('is drawn for a dry coil and for air that is warmed, without an apparatus dew point', () => {
    const pressure = 101325;
    const entering = moistAir({ dryBulb: 24, humidityRatio: 0.008, pressure });
    for (const dryBulb of [16, 35]) {
      const process = { entering, leaving: moistAir({ dryBulb, humidityRatio: 0.008, pressure }) };
      expect(coilOnChart(process).apparatus).toBeNull();
      expect(paths(process, 'line-measured').length).toBe(1);
      expect(paths(process, 'line-beyond')).toEqual([]);
    }
  });

  test('stops at the frame where it goes beyond it, and leaves out the marks that are off the plot', () => {
    const process = cooling(101325, null, [
      [140, 0.05],
      [56, 0.88],
    ]);
    const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820 });
    const [[from]] = [pointsOfPath(paths(process, 'line-measured', frame)[0]!)];
    expect(from![0]).toBeCloseTo(frame.plot.right, 1);
    expect(paths(process, 'mark-return', frame)).toEqual([]);
    expect(paths(process, 'mark-supply', frame).length).toBe(1);
  });

  test('keeps the number of strokes while a point is dragged a little, so that only what moves is touched', () => {
    const start = cooling(101325);
    const frame = frameOf(start);
    const pens = draw(start, frame).strokes.map(({ pen }) => pen);
    for (const fahrenheit of [74, 74.5, 75.5, 76]) {
      const moved = cooling(101325, null, [
        [fahrenheit, 0.5],
        [56, 0.88],
      ]);
      expect(draw(moved, frame).strokes.map(({ pen }) => pen)).toEqual(pens);
    }
  });
});
