import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { moistAir } from '../../src/calc/index.ts';
import { powerText } from '../../src/charts/moistAir/amounts.ts';
import { Crosshair } from '../../src/charts/moistAir/Crosshair.tsx';
import { stateTable, describe as tell } from '../../src/charts/moistAir/describe.ts';
import { chartLines, firstFamilies } from '../../src/charts/moistAir/families.ts';
import { chartFrame } from '../../src/charts/moistAir/frame.ts';
import { MoistAirGround } from '../../src/charts/moistAir/MoistAirGround.tsx';
import { Points } from '../../src/charts/moistAir/Points.tsx';
import { Process } from '../../src/charts/moistAir/Process.tsx';
import { airSentence, propertiesOf, propertyText } from '../../src/charts/moistAir/properties.ts';
import { Region } from '../../src/charts/moistAir/Region.tsx';
import { cooling } from './moistAirSupport.ts';

const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820 });
const process = cooling(101325);

describe('propertiesOf', () => {
  test('names all properties of the air, each with a number and its unit', () => {
    const said = (system: 'ip' | 'si') =>
      propertiesOf(process.entering).map((one) => `${one.name}: ${propertyText(one, system).replace(/\d/g, '0')}`);
    expect(said('ip')).toEqual([
      'Dry bulb: 00.0\u00a0°F',
      'Relative humidity: 00\u00a0%',
      'Wet bulb: 00.0\u00a0°F',
      'Dew point: 00.0\u00a0°F',
      'Humidity ratio: 00.0\u00a0gr/lb',
      'Enthalpy: 00.0\u00a0Btu/lb',
      'Specific volume: 00.00\u00a0ft³/lb',
    ]);
    expect(said('si').slice(4)).toEqual([
      'Humidity ratio: 0.00\u00a0g/kg',
      'Enthalpy: 00.0\u00a0kJ/kg',
      'Specific volume: 0.000\u00a0m³/kg',
    ]);
  });

  test('gives the SI value of each as it is in the state', () => {
    for (const { key, value } of propertiesOf(process.leaving)) expect(value).toBe(process.leaving[key]);
  });

  test('can be said in one sentence', () => {
    expect(airSentence(process.entering, 'ip')).toMatch(
      /^75\.0\u00a0°F, relative humidity 50\u00a0%, wet bulb 62\.\d\u00a0°F, .*specific volume [\d.]+\u00a0ft³\/lb$/,
    );
  });
});

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

describe('stateTable', () => {
  const states = [
    { name: 'Return air', air: process.entering },
    { name: 'Supply air', air: process.leaving },
  ];

  test('has a row for each state, a cell for each head, and units in the heads only', () => {
    const { heads, rows } = stateTable('si', states);
    expect(rows.map(({ name }) => name)).toEqual(['Return air', 'Supply air']);
    for (const { cells } of rows) expect(cells.length).toBe(heads.length - 1);
    expect(heads.map(({ unit }) => unit)).toEqual(['', '°C', '%', '°C', '°C', 'g/kg', 'kJ/kg', 'm³/kg']);
    expect(rows[0]!.cells[0]).toBe('23.9');
    expect(rows.flatMap(({ cells }) => cells).every((cell) => /^−?[\d,.]+$/.test(cell))).toBe(true);
  });
});

describe('powerText', () => {
  test.each([
    [8593.7, 'ip', '29,300\u00a0Btu/h'],
    [8593.7, 'si', '8.59\u00a0kW'],
    [1436, 'ip', '4,900\u00a0Btu/h'],
    [12.3e3, 'si', '12.3\u00a0kW'],
    [123.4e3, 'si', '123\u00a0kW'],
    [-1436, 'si', '−1.44\u00a0kW'],
    [0, 'ip', '0\u00a0Btu/h'],
  ] as const)('%d W in %s is %s', (watts, system, text) => {
    expect(powerText(watts, system)).toBe(text);
  });
});

describe('components', () => {
  const lines = chartLines(frame, firstFamilies);
  const sure = process.uncertainty!.entering!;
  const points = [
    { id: 'a', air: process.entering, mark: 'state', name: 'Room' },
    { id: 'off', air: { dryBulb: 70, humidityRatio: 0.01 }, mark: 'state', name: 'Far' },
  ] as const;
  const all = renderToString(
    <svg class="drawing" role="img" aria-label="Air chart">
      <MoistAirGround frame={frame} lines={lines} />
      <Process frame={frame} {...process} />
      <Region frame={frame} air={process.entering} uncertainty={sure} />
      <Crosshair frame={frame} air={process.entering} />
      <Points frame={frame} points={points} onDown={() => {}} attributesOf={(id) => ({ 'aria-label': id })} />
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

  test('give a point something to take hold of that is 44 px across, and none to a point off the plot', () => {
    expect(all.match(/class="handle"/g)?.length).toBe(1);
    expect(all).toMatch(/<circle[^>]*r="22"/);
    expect(all).toContain('>Room<');
    expect(all).not.toContain('>Far<');
    expect(renderToString(<Points frame={frame} points={points} />)).not.toContain('handle');
  });

  test('leave out every word of a process when that is asked for', () => {
    expect(renderToString(<Process frame={frame} {...process} words={null} />)).not.toContain('<text');
    const own = { entering: { name: 'Room air', amount: '75' } };
    expect(renderToString(<Process frame={frame} {...process} words={own} />)).toContain('>Room air<');
  });

  test('draw no cross-hair where there is no air', () => {
    expect(renderToString(<Crosshair frame={frame} air={null} />)).toBe('');
    expect(renderToString(<Crosshair frame={frame} air={{ dryBulb: 20, humidityRatio: 0.02 }} />)).toBe('');
    expect(renderToString(<Crosshair frame={frame} air={process.entering} />)).toContain('line-scale');
  });
});
