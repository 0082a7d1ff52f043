import { describe, expect, it } from 'vitest';
import { rehypeNoBreakUnits } from '../../src/build/noBreakUnits.mjs';

const within = (tagName: string, value: string) => {
  const text = { type: 'text', value };
  rehypeNoBreakUnits()({ type: 'root', children: [{ type: 'element', tagName, children: [text] }] });
  return text.value.replaceAll('\u00a0', '~');
};

describe('a number and its unit', () => {
  it.each([
    ['at 75 °F and 50 %', 'at 75~°F and 50~%'],
    ['48,000 Btu/h, 1,600 cfm', '48,000~Btu/h, 1,600~cfm'],
    ['a blower of 560 W.', 'a blower of 560~W.'],
    ['14 kW', '14~kW'],
    ['in 1999 We', 'in 1999 We'],
    ['10 feet', '10 feet'],
    ['50, 60 and 80 %', '50, 60 and 80~%'],
  ])('in "%s" stay together', (text, expected) => {
    expect(within('p', text)).toBe(expected);
  });

  it.each(['code', 'math'])('in %s are left as written', (tagName) => {
    expect(within(tagName, '75 °F')).toBe('75 °F');
  });
});
