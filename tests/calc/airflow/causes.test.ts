/**
 * What each method may be wrong by, cause by cause: the half-widths and standard uncertainties that are stated for it, and how much of
 * each reaches the airflow, against what the method itself answers when the cause is put in.
 */
import { describe, expect, test } from 'vitest';
import {
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromGrille,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  airflowFromTraverse,
  type FanTableReading,
  type GrilleVane,
  type Traverse,
} from '../../../src/calc/index.ts';
import { expectCauses, reaching, fanReading as reading, rectangle, standardAir } from './support.ts';

describe('a traverse', () => {
  const even = (value: number) => Array.from({ length: 5 }, () => new Array<number>(5).fill(value));
  const pitot: Traverse = {
    section: { shape: 'rectangular', width: 0.5, height: 0.4 },
    instrument: 'pitot',
    readings: even(12),
    air: standardAir,
    straight: { length: 10, after: 'other' },
  };

  test('by a Pitot tube feels half of its gauge, half of the zero of 0.2 Pa, and a tube held askew', () => {
    expectCauses(airflowFromTraverse(pitot), {
      'traverse.section': 0.03,
      'traverse.area': 0.01,
      'gauge.manometer': rectangle(0.01) / 2,
      'traverse.zero': rectangle(0.2) / 12 / 2,
      'traverse.yaw': 0.01,
    });
  });

  test('in a disturbed section is worth much less', () => {
    expect(reaching(airflowFromTraverse({ ...pitot, straight: null }))['traverse.section']).toBe(0.08);
  });

  test.each([
    ['vane', 'vane'],
    ['thermal', 'hotWire'],
    ['thermalActual', 'hotWire'],
  ] as const)('by %s has the 5 %% of its instrument and no gauge', (instrument, name) => {
    expectCauses(airflowFromTraverse({ ...pitot, instrument, readings: even(4) }), {
      'traverse.section': 0.03,
      'traverse.area': 0.01,
      [`instrument.${name}`]: rectangle(0.05),
    });
  });

  test('with a hole not read leaves a fifth of its share open', () => {
    const readings = even(12).map((line, i) => (i === 0 ? line.map(() => null) : line));
    expect(reaching(airflowFromTraverse({ ...pitot, readings }))['traverse.missing']).toBeCloseTo(
      rectangle(0.2 * 0.2),
      12,
    );
  });
});

describe('a fan table', () => {
  const flow = (pascals: number, change: Partial<FanTableReading> = {}) =>
    airflowFromFanTable({ ...reading, supplyStatic: pascals - 50, ...change }).volumeFlow;

  test.each([101_325, 85e3])(
    'at %s Pa feels its pressure as its own curve falls, and the place of the holes by 7.5 Pa',
    (pressure) => {
      const here = flow(100, { pressure });
      const perCent = (flow(100.1, { pressure }) - flow(99.9, { pressure })) / here / 0.002;
      const perPascal = (flow(100.1, { pressure }) - flow(99.9, { pressure })) / here / 0.2;
      expectCauses(airflowFromFanTable({ ...reading, pressure }), {
        'fanTable.curve': 0.05,
        'fanTable.place': Math.abs(perPascal) * 7.5,
        'fanTable.density': perCent * rectangle(0.02),
        'gauge.manometer': perCent * rectangle(0.01),
      });
    },
  );

  test('without any pressure has no place of holes either', () => {
    const table = { statics: [0, 50, 100], speeds: [{ name: 'one', flows: [0.6, 0.55, 0.5] }] };
    const still = airflowFromFanTable({ ...reading, table, supplyStatic: 0, returnStatic: 0 });
    expect(still.volumeFlow).toBeCloseTo(0.6, 12);
    expectCauses(still, { 'fanTable.curve': 0.05, 'fanTable.density': 0, 'gauge.manometer': 0 });
  });
});

describe('plates and a fan that takes the place of the return', () => {
  const plates = {
    plates: [0.4625],
    shownAs: 'actual',
    pressureNormal: 62,
    pressureWithGrid: 48,
    air: standardAir,
  } as const;

  test('plates feel half of the gauge, and its zero by as much as the two pressures are apart', () => {
    expectCauses(airflowFromFlowGrid(plates), {
      'flowGrid.plate': 0.04,
      'flowGrid.flutter': 0.02 / Math.SQRT2,
      'gauge.manometer': rectangle(0.01) / 2,
      'flowGrid.zero': ((rectangle(0.2) / 48) * (62 / 48 - 1)) / 2,
    });
    expect(reaching(airflowFromFlowGrid({ ...plates, pressureNormal: 48 }))['flowGrid.zero']).toBe(0);
    const turned = airflowFromFlowGrid({ ...plates, pressureNormal: 40 });
    expect(reaching(turned)['flowGrid.zero']).toBeCloseTo(((rectangle(0.2) / 40) * (1 - 40 / 48)) / 2, 12);
  });

  test('a fan feels half of the gauge, and an exponent that may be a tenth out', () => {
    const match = {
      fanFlow: 0.5,
      shownAs: 'actual',
      pressureNormal: 50,
      pressureReached: 40,
      air: standardAir,
    } as const;
    const found = airflowFromPressureMatch(match);
    expectCauses(found, {
      'pressureMatch.fan': 0.03,
      'pressureMatch.flutter': 0.02 / Math.SQRT2,
      'gauge.manometer': rectangle(0.01) / 2,
      'pressureMatch.exponent': rectangle(0.1 * Math.log(50 / 40)),
    });
    expect(found.extrapolated).toBeCloseTo(Math.sqrt(50 / 40), 12);
    expect(found.volumeFlow).toBeCloseTo(0.5 * Math.sqrt(50 / 40), 12);
  });
});

describe('hoods and vanes at the grille', () => {
  const hood = {
    returns: [0.3, 0.2],
    hood: 'compensated',
    shownAs: 'actual',
    covers: true,
    ductsTight: true,
    air: standardAir,
  } as const;
  const vane: GrilleVane = {
    grilles: [{ readings: [2, 2.2, 1.8, 2], width: 0.6, height: 0.5, areaFactor: 0.7 }],
    factorFrom: 'maker',
    air: standardAir,
  };

  test('a hood adds leaks of 5 %, and 10 % where it does not cover the grille', () => {
    expectCauses(airflowFromHood(hood), { 'hood.instrument': 0.08 });
    expectCauses(airflowFromHood({ ...hood, ductsTight: false, covers: false }), {
      'hood.instrument': 0.08,
      'hood.leaks': 0.05,
      'hood.uncovered': 0.1,
    });
    expect(reaching(airflowFromHood({ ...hood, returns: [0.3, null] }))['hood.missing']).toBeCloseTo(
      rectangle(0.1),
      12,
    );
  });

  test.each([
    ['traverse', 0.06],
    ['maker', 0.1],
    ['guess', 0.2],
  ] as const)('a vane has an area factor by %s that may be out by %s', (factorFrom, factor) => {
    const found = airflowFromGrille({ ...vane, factorFrom });
    expect(found.partial).toBe(false);
    expectCauses(found, { 'grille.areaFactor': factor, 'instrument.vane': rectangle(0.05), 'hood.leaks': 0.05 });
    expect(found.remarks.find(({ code }) => code === 'weakestMethod')?.amounts.map(({ value }) => value)).toEqual([
      factor,
    ]);
  });

  test('a vane’s grille of which a part was read leaves that part open, as far as its readings are apart', () => {
    const readings = [2, 2.6, 1.4, null];
    const found = airflowFromGrille({ ...vane, grilles: [{ ...vane.grilles[0]!, readings }] });
    expect(reaching(found)['grille.missing']).toBeCloseTo(rectangle(0.25 * 0.3), 12);
    expect([found.partial, found.volumeFlow]).toEqual([true, expect.closeTo(2 * 0.3 * 0.7, 12)]);
  });
});

test.each([
  ['sensed', 0.1, true],
  ['demanded', 0.15, false],
  ['unsure', 0.15, false],
] as const)('a flow that a control has %s may be out by %s', (shows, limit, evidence) => {
  const found = airflowFromReadout({ volumeFlow: 0.5, shows, ways: ['standard'] });
  expectCauses(found, { 'readout.motor': rectangle(limit) });
  expect(found.evidence).toBe(evidence);
});
