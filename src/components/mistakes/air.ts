/** What mistakes with the probes and with the formula cost. */
import { leakPrices } from '~/calc/confidence/leaks.ts';
import {
  btuPerHour,
  cubicFootPerMinute,
  dryAirFlow,
  fahrenheitDegree,
  moistAir,
  standardPressure,
  type Test,
} from '~/calc/index.ts';
import { aloft, type Cost, cooling, example, loadOf, off, share, states } from './example.ts';

type Side = 'entering' | 'leaving';

const warmer = (side: Side, degrees: number) => (test: Test) => ({
  ...test,
  [side]: { ...test[side], dryBulb: (test[side].dryBulb ?? 0) + degrees * fahrenheitDegree },
});
const moister = (side: Side, points: number) => (test: Test) => ({
  ...test,
  [side]: { ...test[side], relativeHumidity: (test[side].relativeHumidity ?? 0) + points / 100 },
});
const atSeaLevel = (test: Test): Test => ({ ...test, altitude: null });

const { entering, leaving } = states(example);

/** Return air that a hot duct warms by so many °F behind the probe: the coil takes in more than was read. */
function warmedBehindProbe(degrees: number): Cost {
  const real = moistAir({
    dryBulb: entering.dryBulb + degrees * fahrenheitDegree,
    humidityRatio: entering.humidityRatio,
  });
  return {
    about: 'cooling',
    by: off(entering.enthalpy - leaving.enthalpy, real.enthalpy - leaving.enthalpy),
  };
}

function leak(code: string): Cost {
  const price = leakPrices(entering, leaving).find((one) => one.code === code);
  if (!price) throw new Error(`no price of ${code}`);
  return { about: 'cooling', by: price.reads };
}

/** 4.5 times the flow as the blower moves it times the enthalpies, and 1.08 times it times the temperatures. */
function byFactor(test: Test, factor: 'whole' | 'dry'): Cost {
  const air = states(test);
  const volumeFlow = test.airflow.volumeFlow ?? 0;
  const shown =
    factor === 'whole'
      ? dryAirFlow({ volumeFlow, at: 'standard' }) * (air.entering.enthalpy - air.leaving.enthalpy)
      : 1.08 *
        (volumeFlow / cubicFootPerMinute) *
        ((air.entering.dryBulb - air.leaving.dryBulb) / fahrenheitDegree) *
        btuPerHour;
  return { about: 'cooling', by: off(shown, loadOf(test).total) };
}

export const airCosts = {
  supplyWarm: cooling(warmer('leaving', 1)),
  returnWarm: cooling(warmer('entering', 1)),
  bothWarm: cooling((test) => warmer('leaving', 1)(warmer('entering', 1)(test))),
  supplyMoist: cooling(moister('leaving', 3)),
  returnMoist: cooling(moister('entering', 3)),
  bothMoist: cooling((test) => moister('leaving', 3)(moister('entering', 3)(test))),
  wetProbe: cooling(moister('leaving', 11)),
  seesCoil: cooling(warmer('leaving', -2)),
  coldPocket: cooling(warmer('leaving', -1.5)),
  heatOn: cooling(warmer('leaving', 3)),
  hotReturnDuct: warmedBehindProbe(2),
  bypass: leak('bypass'),
  cabinet: leak('cabinet'),
  returnLeak: leak('returnLeak'),
  fourPointFive: byFactor(example, 'whole'),
  fourPointFiveHigh: byFactor(aloft, 'whole'),
  dryPartOnly: byFactor(example, 'dry'),
  heightForgotten: cooling(atSeaLevel, aloft),
  heightForgottenShare: share(atSeaLevel, aloft),
  forecastPressure: cooling((test) => ({ ...test, barometer: standardPressure(0) }), aloft),
} as const satisfies Record<string, Cost>;
