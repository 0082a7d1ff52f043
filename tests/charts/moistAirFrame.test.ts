import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moistAir, saturationHumidityRatio } from '../../src/calc/index.ts';
import { airAt, airUnder, chartFrame, contains, xOf, yOf } from '../../src/charts/moistAir/frame.ts';
import { pointsOf } from '../../src/charts/moistAir/process.ts';
import { charts, cooling, read } from './moistAirSupport.ts';

const toFahrenheit = (celsius: number) => celsius * 1.8 + 32;

/** The bounds of a frame in the units that its scales show. */
function bounds({ system, dryBulb, humidityRatio }: ReturnType<typeof chartFrame>) {
  const ip = system === 'ip';
  return {
    dryBulb: dryBulb.map((t) => (ip ? toFahrenheit(t) : t)),
    humidityRatio: humidityRatio.map((W) => W * (ip ? 7000 : 1000)),
  };
}

const multiple = (value: number, of: number) => Math.abs(value / of - Math.round(value / of)) < 1e-9;

describe.each(charts)('frame at $width px, $system, $pressure Pa', ({ width, system, pressure }) => {
  test('has round bounds that take in rooms and weather', () => {
    const { dryBulb, humidityRatio } = bounds(chartFrame({ system, pressure, width }));
    expect(dryBulb.map((t) => Number(t.toFixed(9)))).toEqual(system === 'ip' ? [40, 100] : [5, 40]);
    expect(humidityRatio[0]).toBe(0);
    expect(multiple(humidityRatio[1]!, system === 'ip' ? 10 : 5)).toBe(true);
  });

  test('keeps round bounds close up, with every point of the process inside', () => {
    const around = pointsOf(cooling(pressure));
    const frame = chartFrame({ system, pressure, width, view: 'process', around });
    const { dryBulb, humidityRatio } = bounds(frame);
    const step = system === 'ip' ? 5 : 1;
    for (const bound of [...dryBulb, ...humidityRatio]) expect(multiple(bound, step), String(bound)).toBe(true);
    for (const air of around) {
      expect(frame.dryBulb[0]).toBeLessThan(air.dryBulb);
      expect(frame.dryBulb[1]).toBeGreaterThan(air.dryBulb);
      expect(frame.humidityRatio[0]).toBeLessThan(air.humidityRatio);
      expect(frame.humidityRatio[1]).toBeGreaterThan(air.humidityRatio);
    }
  });
});

describe('chartFrame', () => {
  test('widens the whole to take in air outside the usual', () => {
    const hot = moistAir({ dryBulb: 46, relativeHumidity: 0.5 });
    const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820, around: [hot] });
    expect(contains(frame, hot)).toBe(true);
    expect(bounds(frame).dryBulb[1]).toBeCloseTo(120, 9);
  });

  test('takes the whole when a close-up has nothing to be drawn around', () => {
    const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820, view: 'process' });
    expect(frame).toEqual(chartFrame({ system: 'ip', pressure: 101325, width: 820 }));
  });

  test('is drawn around one single point as well', () => {
    const air = moistAir({ dryBulb: 24, relativeHumidity: 0.5 });
    const frame = chartFrame({ system: 'si', pressure: 101325, width: 390, view: 'process', around: [air] });
    expect(contains(frame, air)).toBe(true);
    expect(frame.dryBulb[1] - frame.dryBulb[0]).toBeGreaterThan(10);
  });

  test('has the same bounds whatever the width', () => {
    const of = (width: number) => chartFrame({ system: 'si', pressure: 84e3, width });
    expect(of(320).dryBulb).toEqual(of(1440).dryBulb);
    expect(of(320).humidityRatio).toEqual(of(1440).humidityRatio);
  });
});

const place = fc.record({
  x: fc.double({ min: -200, max: 1700, noNaN: true }),
  y: fc.double({ min: -200, max: 1100, noNaN: true }),
});

describe('airAt', () => {
  const frame = chartFrame({ system: 'ip', pressure: 84e3, width: 1440 });
  const saturated = (t: number) => saturationHumidityRatio(t, frame.pressure);
  const onPaper = ({ dryBulb, humidityRatio }: { dryBulb: number; humidityRatio: number }) =>
    [xOf(frame, dryBulb), yOf(frame, humidityRatio)] as const;

  test('is the way back from xOf and yOf', () => {
    fc.assert(
      fc.property(place, ({ x, y }) => {
        const under = airUnder(frame, x, y);
        if (under === null) return;
        expect(under.dryBulb).toBeCloseTo(read(frame, x, y).dryBulb, 9);
        expect(under.humidityRatio).toBeCloseTo(read(frame, x, y).humidityRatio, 12);
        expect(airAt(frame, x, y)).toEqual(under);
        const [backX, backY] = onPaper(under);
        expect(backX).toBeCloseTo(x, 6);
        expect(backY).toBeCloseTo(y, 6);
      }),
      { seed: 3 },
    );
  });

  test('never leaves the plot or the air that can be', () => {
    fc.assert(
      fc.property(place, ({ x, y }) => {
        const { dryBulb, humidityRatio } = airAt(frame, x, y);
        expect(dryBulb).toBeGreaterThanOrEqual(frame.dryBulb[0] - 1e-9);
        expect(dryBulb).toBeLessThanOrEqual(frame.dryBulb[1] + 1e-9);
        expect(humidityRatio).toBeGreaterThanOrEqual(frame.humidityRatio[0] - 1e-12);
        expect(humidityRatio).toBeLessThanOrEqual(Math.min(frame.humidityRatio[1], saturated(dryBulb)) + 1e-12);
        expect(moistAir({ dryBulb, humidityRatio, pressure: frame.pressure }).relativeHumidity).toBeLessThanOrEqual(1);
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  test('slides along saturation to the nearest place on it', () => {
    fc.assert(
      fc.property(place, ({ x, y }) => {
        const { left, right, top, bottom } = frame.plot;
        const [heldX, heldY] = [Math.min(right, Math.max(left, x)), Math.min(bottom, Math.max(top, y))];
        const held = read(frame, heldX, heldY);
        if (held.humidityRatio <= saturated(held.dryBulb)) return;
        const [slidX, slidY] = onPaper(airAt(frame, x, y));
        const slid = Math.hypot(slidX - heldX, slidY - heldY);
        for (let i = 0; i <= 2000; i++) {
          const dryBulb = frame.dryBulb[0] + (i / 2000) * (frame.dryBulb[1] - frame.dryBulb[0]);
          const W = saturated(dryBulb);
          if (W > frame.humidityRatio[1]) break;
          const [otherX, otherY] = onPaper({ dryBulb, humidityRatio: W });
          expect(slid).toBeLessThan(Math.hypot(otherX - heldX, otherY - heldY) + 0.01);
        }
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  test('moves along saturation without a jump while the hand moves above it', () => {
    let last: readonly [number, number] | null = null;
    for (let x = 40; x < 800; x += 2) {
      const now = onPaper(airAt(frame, x, 60));
      if (last) expect(Math.hypot(now[0] - last[0], now[1] - last[1])).toBeLessThan(4);
      last = now;
    }
  });
});

describe('airUnder', () => {
  const frame = chartFrame({ system: 'si', pressure: 101325, width: 820 });

  test('is nothing outside the plot and above saturation', () => {
    expect(airUnder(frame, frame.plot.right + 1, 300)).toBeNull();
    expect(airUnder(frame, frame.plot.left + 5, frame.plot.top + 5)).toBeNull();
    expect(airUnder(frame, frame.plot.right - 5, frame.plot.bottom - 5)).not.toBeNull();
  });
});
