import { describe, expect, test } from 'vitest';
import { standardPressure } from '../../src/calc/index.ts';
import { allFamilies, chartLines, firstFamilies } from '../../src/charts/moistAir/families.ts';
import { chartFrame } from '../../src/charts/moistAir/frame.ts';
import { pointsOf } from '../../src/charts/moistAir/process.ts';
import { processBoxes, processDrawing } from '../../src/charts/moistAir/processDrawing.ts';
import { processWords } from '../../src/charts/moistAir/processWords.ts';
import { standalone } from '../../src/charts/moistAir/standalone.ts';
import { cooling } from './moistAirSupport.ts';
import { drawnAsBefore } from './picture.ts';

function blank(system: 'ip' | 'si', pressure: number, title: string): string {
  const frame = chartFrame({ system, pressure, width: 1440 });
  return standalone(frame, chartLines(frame, allFamilies), null, { title });
}

function withProcess(): string {
  const process = cooling(101325, { heat: 400, place: 'after coil' });
  const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820, view: 'process', around: pointsOf(process) });
  const words = processWords('ip', process);
  const lines = chartLines(frame, firstFamilies, processBoxes(frame, process, words));
  const note = '29.92\u00a0inHg. Demo, invented';
  return standalone(frame, lines, processDrawing(frame, process, words), {
    title: 'What the coil does to the air',
    note,
  });
}

const pictures: Readonly<Record<string, () => string>> = {
  'sea-level-ip': () => blank('ip', 101325, 'Air chart, sea level'),
  'sea-level-si': () => blank('si', 101325, 'Air chart, sea level'),
  '1600-m': () => blank('si', standardPressure(1600), 'Air chart, 1,600 m'),
  process: withProcess,
};

describe('the picture itself', () => {
  test.each(Object.keys(pictures))('%s is drawn as it was', (name) => {
    drawnAsBefore(name, pictures[name]!());
  });
});

describe('standalone', () => {
  const svg = withProcess();

  test('needs no stylesheet: presentation attributes and a generic font only', () => {
    expect(svg).not.toMatch(/\s(class|style)=|var\(|<style|<script|href=/);
    expect(svg).toMatch(/font-family="sans-serif"/);
    const colours = new Set([...svg.matchAll(/(?:fill|stroke)="(#[^"]+)"/g)].map(([, colour]) => colour));
    expect([...colours].sort()).toEqual(['#000', '#333', '#fff']);
  });

  test('draws with the pens of the line language', () => {
    const pens = new Set([...svg.matchAll(/<path[^>]*stroke-width="([^"]+)"/g)].map(([, width]) => width));
    expect([...pens].sort()).toEqual(['0.7', '1', '1.4', '2', '2.8']);
  });

  test('says its title, its units and that a demo is invented', () => {
    for (const text of [
      'What the coil does to the air',
      'grains of water',
      'dry bulb, °F',
      '29.92\u00a0inHg. Demo, invented',
    ]) {
      expect(svg).toContain(text);
    }
  });

  test('takes any title for text and breaks one that is too long', () => {
    const frame = chartFrame({ system: 'si', pressure: 101325, width: 320 });
    const title = '<b onload="x">&\u0007 a title that is far too long for one line of a small drawing';
    const small = standalone(frame, [], null, { title });
    expect(small).not.toContain('<b');
    expect(small).not.toContain('\u0007');
    expect(small).toContain('&lt;b onload=&quot;x&quot;&gt;&amp;');
    const heads = small.match(/font-weight="600"/g);
    expect(heads?.length).toBeGreaterThan(1);
  });

  test('is well formed: every element is closed', () => {
    const open = [...svg.matchAll(/<(\w+)(?:\s[^>]*[^/])?>/g)].map(([, name]) => name).sort();
    const closed = [...svg.matchAll(/<\/(\w+)>/g)].map(([, name]) => name).sort();
    expect(closed).toEqual(open);
  });
});
