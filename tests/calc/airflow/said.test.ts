/** What is said of an airflow: on either side of each mark, and with the figures that a sentence about it needs. */
import { describe, expect, test } from 'vitest';
import {
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  airflowFromTemperatureRise,
  airflowFromTraverse,
  airflowPerTon,
  type BlowerSpeed,
  cubicFootPerMinute,
  type FanTable,
  inchOfWater,
  standardAirDensity,
  tonOfRefrigeration,
} from '../../../src/calc/index.ts';
import { pitot } from './pitotTraverse.ts';
import { said, standardAir } from './support.ts';

describe('a fan table', () => {
  const rows = (...flows: readonly number[]): FanTable => ({
    statics: [0.1, 0.4, 0.7, 1, 1.3].map((one) => one * inchOfWater),
    speeds: [{ name: 'one', flows }],
  });
  const level = rows(0.5, 0.5, 0.5, 0.5, 0.4);
  const falls = rows(0.6, 0.55, 0.5, 0.45, 0.4);
  const at = (
    inches: number,
    table: FanTable,
    motor: 'fixedSpeed' | 'constantAirflow' | 'unsure',
    pressure = 101_325,
  ) =>
    said(
      airflowFromFanTable({
        table,
        column: 0,
        motor,
        supplyStatic: inches * inchOfWater,
        returnStatic: 0,
        pressure,
        air: standardAir,
      }),
    );
  const [least, most] = [0.1, 1].map((one) => Number((one * inchOfWater).toPrecision(6)));
  const plateau = [
    ['p₁', least],
    ['p₂', most],
  ];

  test('says from 0.8 in. w.c. on that the static is high', () => {
    expect(at(0.799, falls, 'fixedSpeed')).toEqual([]);
    const pascals = Number((0.8 * inchOfWater).toPrecision(6));
    expect(at(0.8, falls, 'fixedSpeed')).toEqual([['highExternalStatic', 'doubt', ['pₑ', pascals], ['p', pascals]]]);
  });

  test.each([
    ['holds and nobody knew', level, 'unsure', ['fanHoldsAirflow', 'note']],
    ['holds as was said', level, 'constantAirflow', ['fanHoldsAirflow', 'note']],
    ['seems to hold against what was said', level, 'fixedSpeed', ['fanSeemsToHold', 'doubt']],
    ['does not hold as was said', falls, 'constantAirflow', ['fanDoesNotHold', 'doubt']],
  ] as const)('says that the motor %s, and where it was looked at', (_, table, motor, remark) => {
    expect(at(0.5, table, motor)).toEqual([[...remark, ...plateau]]);
  });

  test.each([
    ['fixedSpeed', falls],
    ['unsure', falls],
  ] as const)('says nothing of a motor that is what it was taken for: %s', (motor, table) => {
    expect(at(0.5, table, motor)).toEqual([]);
  });

  test('says that the pressure is past 1 in. w.c. only of a motor that holds its airflow', () => {
    const codes = (...args: Parameters<typeof at>) => at(...args).map(([code]) => code);
    expect(codes(1.01, level, 'constantAirflow')).toEqual(['highExternalStatic', 'fanHoldsAirflow', 'pastPlateau']);
    expect(codes(1, level, 'constantAirflow')).toEqual(['highExternalStatic', 'fanHoldsAirflow']);
    expect(codes(1.01, falls, 'fixedSpeed')).toEqual(['highExternalStatic']);
    expect(at(1.01, level, 'constantAirflow').at(-1)?.slice(2)).toEqual([
      ['pₑ', Number((1.01 * inchOfWater).toPrecision(6))],
      ['p₂', most],
    ]);
  });

  test('says from 1 % on what thin air leaves open of such a motor', () => {
    // The volume or the mass is held: half of 1/r − 1 over the middle, (1 − r)/(1 + r).
    const ratio = (half: number) => (1 - half) / (1 + half);
    expect(at(0.5, level, 'constantAirflow', 101_325 * ratio(0.0099)).map(([code]) => code)).toEqual([
      'fanHoldsAirflow',
    ]);
    expect(at(0.5, level, 'constantAirflow', 101_325 * ratio(0.0101)).at(-1)).toEqual([
      'motorAtAltitude',
      'note',
      ['Δ', 0.0101],
    ]);
  });
});

describe('plates and a fan at the return', () => {
  const plates = { plates: [0.5], shownAs: 'actual', pressureWithGrid: 50, air: standardAir } as const;
  const match = { fanFlow: 0.5, shownAs: 'actual', pressureNormal: 100, air: standardAir } as const;

  test.each([
    [1.249, []],
    [1.25, []],
    [1.251, [['largeGridCorrection', 'doubt', ['C', 1.251]]]],
    [1, []],
    [0.999, [['gridRaisedPressure', 'doubt', ['C', 0.999]]]],
  ])('plates that are corrected by %s: %s', (correction, expected) => {
    const found = airflowFromFlowGrid({ ...plates, pressureNormal: 50 * correction ** 2 });
    expect(said(found)).toEqual(expected);
    expect(found.correction).toBeCloseTo(correction, 12);
  });

  test.each([
    [97.1, []],
    [96.9, [['pressureNotReached', 'note', ['s', 0.969], ['n', 0.5]]]],
    [50, [['pressureNotReached', 'note', ['s', 0.5], ['n', 0.5]]]],
    [49.9, [['pressureFarFromReached', 'doubt', ['s', 0.499], ['n', 0.5]]]],
    [102.9, []],
    [103.1, [['pressureOvershot', 'note', ['s', 1.031], ['n', 0.5]]]],
  ])('a fan that comes to %s of 100 Pa: %s', (pressureReached, expected) => {
    expect(said(airflowFromPressureMatch({ ...match, pressureReached }))).toEqual(expected);
  });
});

describe('the speed on which the blower ran', () => {
  const speeds: readonly (readonly [BlowerSpeed, readonly string[]])[] = [
    ['cooling', []],
    ['other', ['otherSpeed']],
    ['unsure', ['speedUnsure']],
  ];
  const hood = {
    returns: [0.3],
    hood: 'powered',
    shownAs: 'actual',
    covers: true,
    ductsTight: true,
    air: standardAir,
  } as const;

  test.each(speeds)('%s is said of every method: %s', (speed, codes) => {
    for (const found of [
      airflowFromHood({ ...hood, speed }),
      airflowFromTraverse({ ...pitot, speed }),
      airflowFromReadout({ volumeFlow: 0.5, shows: 'sensed', ways: ['standard'], speed }),
    ]) {
      expect(said(found)).toEqual(codes.map((code) => [code, 'doubt']));
      expect([found.speed, found.problems, found.partial]).toEqual([speed, [], false]);
    }
  });

  test('has a word of its own for heat', () => {
    const rise = {
      blower: 'outside',
      enteringDryBulb: 21,
      leavingDryBulb: 41,
      humidityRatio: 0.008,
      probes: 'several',
      probeLimit: 0.5,
    } as const;
    const found = (speed: BlowerSpeed) =>
      said(airflowFromTemperatureRise({ ...rise, heat: { kind: 'power', power: 9e3 }, speed }));
    const dry = ['dryCoilAirflow', 'note', ['Δ', 0.03]];
    expect([found('cooling'), found('other'), found('unsure')]).toEqual([
      [dry],
      [['heatingSpeed', 'doubt'], dry],
      [['heatingSpeed', 'doubt'], dry],
    ]);
  });
});

test.each([
  ['humid', 325, 350],
  ['ordinary', 350, 400],
  ['dry', 400, 450],
  ['rated', 300, 450],
  ['working', 200, 500],
] as const)('%s is from %s to %s cfm per ton, both ends inside', (name, low, high) => {
  const position = (each: number) => {
    const flow = 3 * each * cubicFootPerMinute * standardAirDensity;
    return airflowPerTon(flow, 3 * tonOfRefrigeration).ranges.find((one) => one.name === name)?.position;
  };
  expect([low - 0.01, low + 0.001, high - 0.001, high + 0.01].map(position)).toEqual([
    'below',
    'inside',
    'inside',
    'above',
  ]);
});
