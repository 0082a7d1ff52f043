/** Every calculation on a few numbers, with arguments by chance. */
import * as calc from '../../src/calc/index.ts';
import type { Chance } from './chance.ts';

const { limits } = calc;

type Call = (c: Chance) => unknown;

const dryBulb = (c: Chance) => c.inRange(-60, 90);
const pressure = (c: Chance) => c.inRange(50e3, 110e3);
const humidityRatio = (c: Chance) => c.inRange(0, 0.05);
const within = (c: Chance, range: readonly [number, number]) => c.inRange(range[0], range[1]);
const power = (c: Chance) => c.inRange(0, 5000);
const flow = (c: Chance) => c.inRange(0.05, 5);

/** A state that is asked for all that it has. */
const whole = (input: calc.MoistAirInput) => ({ ...calc.moistAir(input) });
const humidities: readonly ((c: Chance) => object)[] = [
  (c) => ({ relativeHumidity: c.inRange(0, 1) }),
  (c) => ({ wetBulb: c.inRange(-40, 60) }),
  (c) => ({ dewPoint: c.inRange(-60, 60) }),
  (c) => ({ humidityRatio: humidityRatio(c) }),
  (c) => ({ enthalpy: c.inRange(-40e3, 200e3) }),
];
const state = (c: Chance) =>
  whole({ dryBulb: c.inRange(0, 50), pressure: 101_325, relativeHumidity: c.inRange(0, 1) } as calc.MoistAirInput);
const ownPressure = (c: Chance) =>
  whole({
    dryBulb: dryBulb(c),
    pressure: pressure(c),
    ...c.oneOf(humidities)(c),
  } as calc.MoistAirInput);

const air = (c: Chance): calc.AirThere => ({ specificVolume: c.inRange(0.7, 1.2), density: c.inRange(0.8, 1.4) });
const place = (c: Chance) => c.oneOf(['before coil', 'after coil', 'outside probes'] as const);
const shown = (c: Chance) => c.oneOf(['actual', 'standard', 'uncorrected'] as const);
const tube = (c: Chance) => c.oneOf([...Object.keys(calc.tubes), 'hose']) as calc.Tube;
const refrigerant = (c: Chance) => c.oneOf([...calc.refrigerants, 'water' as calc.Refrigerant]);
const orNull = (c: Chance, value: () => number) => (c.next() < 0.3 ? null : value());
const around = (c: Chance) => ({ dryBulb: c.inRange(0, 70), enthalpy: c.inRange(0, 150e3) });
const duct = (c: Chance): calc.DuctRun => ({
  area: c.inRange(0, 100),
  resistance: c.inRange(0.1, 2),
  leakage: c.inRange(0, 1),
  around: around(c),
});

export const fewNumbers: Readonly<Record<string, Call>> = {
  moistAir: ownPressure,
  saturationPressure: (c) => calc.saturationPressure(c.inRange(-100, 200)),
  humidityRatio: (c) => calc.humidityRatio(dryBulb(c), c.inRange(0, 1), pressure(c)),
  saturationHumidityRatio: (c) => calc.saturationHumidityRatio(dryBulb(c), pressure(c)),
  humidityRatioFromWetBulb: (c) => calc.humidityRatioFromWetBulb(dryBulb(c), c.inRange(-60, 90), pressure(c)),
  enthalpy: (c) => calc.enthalpy(dryBulb(c), humidityRatio(c)),
  specificVolume: (c) => calc.specificVolume(dryBulb(c), humidityRatio(c), pressure(c)),
  wetBulb: (c) => calc.wetBulb(dryBulb(c), humidityRatio(c), pressure(c)),
  dewPoint: (c) => calc.dewPoint(humidityRatio(c), pressure(c)),
  enhancementFactor: (c) => calc.enhancementFactor(dryBulb(c), pressure(c)),
  standardPressure: (c) => calc.standardPressure(c.inRange(-5000, 11_000)),
  mix: (c) => calc.mix({ air: state(c), dryAirFlow: flow(c) }, { air: state(c), dryAirFlow: flow(c) }),
  dryAirFlow: (c) =>
    calc.dryAirFlow({
      volumeFlow: within(c, limits.volumeFlow),
      at: c.next() < 0.5 ? 'standard' : { specificVolume: within(c, limits.specificVolume) },
    }),
  coilLoad: (c) =>
    calc.coilLoad({
      entering: state(c),
      leaving: state(c),
      dryAirFlow: flow(c),
      ...(c.next() < 0.5 ? {} : { blower: { heat: power(c), place: place(c) } }),
    }),
  blowerHeat: (c) => calc.blowerHeat({ power: power(c) }),
  defaultBlowerPower: (c) => calc.defaultBlowerPower(flow(c)),
  dryOut: (c) =>
    calc.dryOut({
      dryBulb: c.inRange(15, 40),
      dryAirFlow: flow(c),
      total: c.inRange(1, 30e3),
      bypassFactor: c.inRange(0, 1),
      pressure: pressure(c),
    }),
  ductGain: (c) =>
    calc.ductGain({
      supply: duct(c),
      return: duct(c),
      dryAirFlow: flow(c),
      total: c.inRange(1, 30e3),
      supplyDryBulb: c.inRange(0, 30),
      room: around(c),
      regain: c.inRange(0, 1),
    }),
  pipeDrop: (c) =>
    calc.pipeDrop({
      massFlow: c.inRange(1e-6, 1),
      density: c.inRange(0.1, 1500),
      viscosity: c.inRange(1e-6, 1e-3),
      diameter: c.inRange(1e-4, 0.1),
      length: c.inRange(0, 100),
      roughness: c.inRange(0, 1e-5),
    }),
  refrigerantState: (c) =>
    calc.refrigerantState(
      refrigerant(c),
      c.next() < 0.5
        ? { dewPoint: c.inRange(-20, 65), superheat: c.inRange(0, 20) }
        : { bubblePoint: c.inRange(-20, 65), subcooling: c.inRange(0, 30) },
    ),
  lineSet: (c) =>
    calc.lineSet({
      equipment: c.oneOf(['split', 'packaged'] as const),
      metering: c.oneOf(['indoors', 'outdoors'] as const),
      maker: {
        factor: orNull(c, () => c.inRange(0.5, 1)),
        maximumLength: orNull(c, () => c.inRange(0, 100)),
        maximumLift: orNull(c, () => c.inRange(-30, 30)),
      },
      run: {
        refrigerant: refrigerant(c),
        capacity: c.inRange(1, 30e3),
        evaporating: c.inRange(-20, 25),
        superheat: c.inRange(0, 20),
        liquidTemperature: c.inRange(0, 60),
        subcooling: orNull(c, () => c.inRange(0, 30)),
        vaporTube: tube(c),
        ratedVaporTube: tube(c),
        liquidTube: tube(c),
        length: c.inRange(0, 100),
        ratedLength: c.inRange(0, 30),
        fittings: c.inRange(0, 30),
        lift: c.inRange(-30, 30),
      },
    }),
  conformance: (c) =>
    calc.conformance(
      { value: c.inRange(0, 2), u: c.inRange(0.001, 0.5), degreesOfFreedom: orNull(c, () => c.inRange(1, 100)) },
      { lower: c.inRange(0, 1), upper: c.inRange(1, 2), confidence: c.inRange(0.5, 1) },
    ),
  condensateCheck: (c) => {
    const value = c.inRange(0, 0.01);
    const u = c.inRange(0, 0.001);
    const interval = { probability: 0.9, k: 1.28, low: value - u, high: value + u };
    const caught = {
      mass: c.inRange(0, 10),
      duration: c.inRange(0, 7200),
      massLimit: orNull(c, () => c.inRange(0, 1)),
    };
    return calc.condensateCheck(caught, { value, u, degreesOfFreedom: null, interval, shares: [] }, { dryBulb: 24 });
  },
  airflowPerTon: (c) => calc.airflowPerTon(flow(c), c.inRange(1000, 30e3)),
  airflowFromReadout: (c) =>
    calc.airflowFromReadout({
      volumeFlow: c.inRange(0.01, 3),
      shows: c.oneOf(['sensed', 'demanded', 'unsure'] as const),
      ways: ['standard', { specificVolume: c.inRange(0.7, 1.2) }],
    }),
  airflowFromPressureMatch: (c) =>
    calc.airflowFromPressureMatch({
      fanFlow: c.inRange(0.01, 3),
      shownAs: shown(c),
      pressureNormal: c.inRange(-200, 200),
      pressureReached: c.inRange(-200, 200),
      air: air(c),
    }),
  airflowFromTemperatureRise: (c) =>
    calc.airflowFromTemperatureRise({
      heat: {
        kind: 'electric',
        phases: c.oneOf([1, 3] as const),
        voltage: c.inRange(100, 500),
        current: c.inRange(1, 100),
        powerFactor: c.inRange(0.5, 1),
      },
      blower: { power: power(c) },
      enteringDryBulb: c.inRange(0, 40),
      leavingDryBulb: c.inRange(0, 80),
      humidityRatio: humidityRatio(c),
      probes: c.oneOf(['several', 'one', 'inSight'] as const),
      probeLimit: c.inRange(0, 2),
      speed: 'cooling',
    }),
};
