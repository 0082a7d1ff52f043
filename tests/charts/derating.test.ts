import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxOf, inside, touch } from '../../src/charts/box.ts';
import { layoutOf, letter } from '../../src/charts/derating/layout.ts';
import { type LedgerProps, ledgerDrawing } from '../../src/charts/derating/ledger.ts';
import { asText, drawnAsBefore } from './picture.ts';

const names = [
  'On the nameplate',
  '1 Certified for this pair, at 95 °F and 67 °F',
  '2 At 91 °F outdoors, 62.6 °F wet bulb',
  '3 With this indoor unit',
  '4 At 1,200 cfm',
  '5 Blower’s heat inside the rating put back: gross',
  '6 Behind this line set',
  '7 In the air at 5,000 ft',
  '8 This blower’s heat taken off: net',
];
const example = [36000, 33500, 31600, 31600, 31600, 32800, 32500, 32500, 31500];
const widths = [288, 358, 620, 788, 840] as const;

const grouped = (value: number) => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ',');

/** A ledger of capacities in Btu/h. */
function ledger(values: readonly number[], width: number, measured: number | null = 29300): LedgerProps {
  return {
    width,
    unit: 'Btu/h',
    should: 'should make, 87.5 %',
    measured: measured === null ? null : { value: measured, text: 'measured, 81.4 % (75 to 88 %)' },
    range: measured === null ? null : [0.93 * measured, 1.07 * measured],
    rows: values.map((value, i) => {
      const by = value - (values[i - 1] ?? value);
      const changes = i > 0 && Math.abs(by) >= 1;
      return {
        name: names[i]!,
        amount: grouped(value),
        value,
        change: changes ? `${by < 0 ? '−' : '+'}${grouped(Math.abs(by))}` : null,
        note: i > 0 && !changes ? 'does not apply' : null,
        tried: false,
        isSum: i === values.length - 1,
      };
    }),
  };
}

/** Words that touch one another, or leave the paper. */
function faults(props: LedgerProps): string[] {
  const { words, width, height } = ledgerDrawing(props);
  const boxes = words.map((one) => ({ text: one.text, box: boxOf(one, letter) }));
  return boxes.flatMap(({ text, box }, i) => [
    ...(inside(box, width + 1, height) ? [] : [`${text} is off the paper`]),
    ...boxes.slice(i + 1).flatMap((other) => (touch(box, other.box) ? [`${text} touches ${other.text}`] : [])),
  ]);
}

describe('the ledger of steps', () => {
  test.each(widths)('at %i px has no word that touches another', (width) => {
    expect(faults(ledger(example, width))).toEqual([]);
    expect(faults(ledger(example, width, null))).toEqual([]);
    expect(faults(ledger(example, width, 36500))).toEqual([]);
  });

  test('keeps its words apart whatever the steps come to', () => {
    const factor = fc.double({ min: 0.8, max: 1.12, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(factor, { minLength: 8, maxLength: 8 }),
        fc.constantFrom(...widths),
        factor,
        (factors, width, share) => {
          const values = [36000];
          for (const one of factors) values.push(values.at(-1)! * one);
          const props = ledger(values, width, share * values.at(-1)!);
          expect(faults(props)).toEqual([]);
          const texts = ledgerDrawing(props).words.map(({ text }) => text);
          expect(texts).toEqual(expect.arrayContaining([props.should, props.measured!.text]));
        },
      ),
      { numRuns: 300 },
    );
  });

  test('puts every dot on one scale', () => {
    const props = ledger(example, 840);
    const layout = layoutOf(props);
    const dots = ledgerDrawing(props).strokes.filter(({ pen }) => pen === 'dot');
    expect(dots).toHaveLength(example.length);
    const [first, , third] = dots.map(({ d }) => Number(/^M(-?[\d.]+)/.exec(d)![1]) + 4.5);
    expect(first).toBeCloseTo(layout.x(36000), 0);
    expect(third! - first!).toBeCloseTo(layout.x(31600) - layout.x(36000), 0);
  });

  test('has a dimension line for each step that changes something, and a word for each that does not', () => {
    const { strokes, words } = ledgerDrawing(ledger(example, 840));
    expect(strokes.filter(({ pen }) => pen === 'line-dimension')).toHaveLength(5);
    expect(words.filter(({ text }) => text === 'does not apply')).toHaveLength(3);
  });

  test('shows a step that is tried out as a ring', () => {
    const props = ledger(example, 840);
    const rows = props.rows.map((row, i) => ({ ...row, tried: i === 5 }));
    expect(ledgerDrawing({ ...props, rows }).strokes.filter(({ pen }) => pen === 'aim')).toHaveLength(1);
  });

  test.each([
    ['ledger-wide', 840],
    ['ledger-narrow', 358],
  ] as const)('is drawn as it was: %s', (name, width) => {
    const drawn = ledgerDrawing(ledger(example, width));
    drawnAsBefore(name, asText(drawn, drawn));
  });
});
