import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/**
 * Contrast of the tokens by WCAG 2.2 (relative luminance and contrast ratio as defined there, read): 4.5 for text (1.4.3),
 * 3 for lines and frames whose meaning depends on being seen (1.4.11). The hair rule carries no meaning and is not held to it.
 */
const css = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');

type Tokens = Record<string, string>;

/** The custom properties of the first rule with this selector after `from`. */
function block(selector: string, from = 0): Tokens {
  const start = css.indexOf(`${selector} {`, from);
  if (start < 0) throw new Error(`no rule for ${selector}`);
  const body = css.slice(start, css.indexOf('}', start));
  return Object.fromEntries([...body.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name, value]));
}

const root = block(':root');
const sun = block(':root[data-theme="sun"]');
const moreContrast = block(':root:not([data-theme])', css.indexOf('prefers-contrast: more'));

const side = (index: 0 | 1): Tokens =>
  Object.fromEntries(
    Object.entries(root).map(([name, value]) => {
      const both = value.match(/^light-dark\((#\w+), (#\w+)\)$/);
      return [name, both?.[index + 1] ?? value];
    }),
  );

const themes: Record<string, Tokens> = { light: side(0), dark: side(1), sun: { ...side(0), ...sun } };

function luminance(hex: string): number {
  const short = hex.length === 4;
  const channel = (index: number) => {
    const digits = short ? hex.slice(index + 1, index + 2).repeat(2) : hex.slice(2 * index + 1, 2 * index + 3);
    const c = Number.parseInt(digits, 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(0) + 0.7152 * channel(1) + 0.0722 * channel(2);
}

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe('the measure of contrast itself', () => {
  it.each([
    ['#000000', '#ffffff', 21],
    ['#ffffff', '#ffffff', 1],
    ['#777777', '#ffffff', 4.48],
    ['#767676', '#ffffff', 4.54],
  ])('gives the known ratio of %s on %s', (a, b, expected) => {
    // The two greys stand on each side of the limit in W3C's Understanding 1.4.3 (memory).
    expect(contrast(a, b)).toBeCloseTo(expected, 2);
  });
});

describe.each(Object.entries(themes))('in %s', (_, tokens) => {
  it.each(['ink', 'quiet', 'touch'])('text in %s can be read on paper', (name) => {
    expect(contrast(tokens[name]!, tokens.paper!)).toBeGreaterThanOrEqual(4.5);
  });

  it('the filled action can be read', () => {
    expect(contrast(tokens.paper!, tokens.touch!)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['ink', 'edge', 'return', 'supply', 'touch'])('a line or frame in %s can be seen on paper', (name) => {
    expect(contrast(tokens[name]!, tokens.paper!)).toBeGreaterThanOrEqual(3);
  });
});

/**
 * What is left of a colour at 60 % of the contrast, as `contrast(60%)` of CSS Filter Effects has it: each channel is drawn to the
 * middle by two fifths. So glare on a phone is taken to be: white is greyed by it, and black is lit.
 */
function inGlare(hex: string): string {
  const [, r = '', g = '', b = ''] =
    /^#(\w\w)(\w\w)(\w\w)$/.exec(hex.length === 4 ? hex.replace(/\w/g, '$&$&') : hex) ?? [];
  const drawn = [r, g, b].map((digits) => Math.round(0.6 * Number.parseInt(digits, 16) + 0.2 * 255));
  return `#${drawn.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}

describe('at 60 % of the contrast', () => {
  const left = (tokens: Tokens, name: string) => contrast(inGlare(tokens[name]!), inGlare(tokens.paper!));

  it('draws black and white to two greys', () => {
    expect([inGlare('#000'), inGlare('#ffffff')]).toEqual(['#333333', '#cccccc']);
  });

  it.each(['ink', 'quiet', 'touch', 'edge', 'return', 'supply'])(
    'sun leaves what is in %s as clear as text',
    (name) => {
      expect(left(themes.sun!, name)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each(Object.keys(themes))('what is in ink can still be read in %s', (theme) => {
    expect(left(themes[theme]!, 'ink')).toBeGreaterThanOrEqual(4.5);
  });
});

describe('sun', () => {
  it('is the same whether chosen by hand or asked for by the system', () => {
    expect(moreContrast).toEqual(sun);
  });

  it('makes every pen one step thicker', () => {
    const next = ['1', '2', '3', '4'].map((pen) => [sun[`pen-${pen}`], root[`pen-${Number(pen) + 1}`]]);
    for (const [thick, expected] of next) expect(thick).toBe(expected);
  });
});
