import { describe, expect, test } from 'vitest';
import { boxBetween } from '../../src/charts/box.ts';
import { chartFrame } from '../../src/charts/moistAir/frame.ts';
import { pointNames } from '../../src/charts/moistAir/pointNames.ts';

const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820 });

describe('names of points', () => {
  test('stand right above their point, and elsewhere around it where that is taken', () => {
    const alone = { place: [400, 300], name: 'Room' } as const;
    expect(pointNames(frame, [alone])[0]).toMatchObject({ text: 'Room', x: 409, y: 286, anchor: 'start' });
    const taken = [boxBetween([405, 286], [450, 286], 8)];
    expect(pointNames(frame, [alone], taken)[0]).toMatchObject({ text: 'Room', x: 391, anchor: 'end' });
  });

  test('do not fall on one another where points crowd: a fifth point at one place goes without', () => {
    const crowd = Array.from({ length: 5 }, (_, i) => ({ place: [400, 300] as const, name: `Air ${i + 1}` }));
    const words = pointNames(frame, crowd);
    expect(words.length).toBe(4);
    expect(new Set(words.map(({ x, y }) => `${x} ${y}`)).size).toBe(4);
  });

  test('leave a point without a name alone', () => {
    expect(pointNames(frame, [{ place: [400, 300] }])).toEqual([]);
  });
});
