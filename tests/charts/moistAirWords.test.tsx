import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { moistAir } from '../../src/calc/index.ts';
import { describe as tell } from '../../src/charts/moistAir/describe.ts';
import { chartLines, firstFamilies } from '../../src/charts/moistAir/families.ts';
import { chartFrame } from '../../src/charts/moistAir/frame.ts';
import { MoistAirGround } from '../../src/charts/moistAir/MoistAirGround.tsx';
import { Process } from '../../src/charts/moistAir/Process.tsx';
import { cooling } from './moistAirSupport.ts';

const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820 });
const process = cooling(101325);

describe('describe', () => {
  test('tells the chart: pressure, both points, what happens between them, and the coil', () => {
    const text = tell(frame, process.entering, process.leaving, process.load);
    expect(text).toContain('29.92\u00a0inHg');
    expect(text).toMatch(/Return air: 75\.0\u00a0°F, 50\u00a0%, [\d.]+\u00a0gr\/lb\./);
    expect(text).toContain('Supply air: 56.0\u00a0°F, 88\u00a0%');
    expect(text).toMatch(/19\.0\u00a0°F cooler and [\d.]+\u00a0gr\/lb drier/);
    expect(text).toContain('24,300\u00a0Btu/h of cooling (sensible) and 4,900\u00a0Btu/h of drying (latent)');
    expect(text).toContain('51.9\u00a0°F (apparatus dew point); the bypass factor is 0.18');
  });

  test('tells what there is while something is missing', () => {
    expect(tell(frame, null, null, null)).toBe('Air chart for 29.92\u00a0inHg: dry bulb across, water in the air up.');
    const warmed = moistAir({ dryBulb: 30, relativeHumidity: 0.5 });
    expect(tell(frame, process.entering, warmed, null)).toMatch(/warmer and .* damper\.$/);
    expect(tell({ system: 'si', pressure: 84e3 }, null, null, null)).toContain('840\u00a0hPa');
    expect(tell(frame, process.entering, null, null)).not.toContain('Supply air');
  });
});

describe('components', () => {
  const lines = chartLines(frame, firstFamilies);
  const all = renderToString(
    <svg class="drawing" role="img" aria-label="Air chart">
      <MoistAirGround frame={frame} lines={lines} />
      <Process frame={frame} {...process} />
    </svg>,
  );

  test('carry no style of their own: the content policy forbids it', () => {
    expect(all).not.toMatch(/\sstyle=/);
    expect(all).not.toMatch(/stroke-width=|stroke-dasharray=/);
  });

  test('draw each family as one path in its own pen', () => {
    for (const pen of ['line-saturation', 'line-humidity', 'line-wet-bulb']) {
      expect(all.split(`class="${pen}"`).length - 1, pen).toBe(1);
    }
  });

  test('leave out every word of a process when that is asked for', () => {
    expect(renderToString(<Process frame={frame} {...process} words={null} />)).not.toContain('<text');
    const own = { entering: { name: 'Room air', amount: '75' } };
    expect(renderToString(<Process frame={frame} {...process} words={own} />)).toContain('>Room air<');
  });
});
