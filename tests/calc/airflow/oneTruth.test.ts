import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type AirflowFound,
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromGrille,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  airflowFromTemperatureRise,
  airflowFromTraverse,
  combineAirflows,
  heatDryAir,
  heatVapor,
  type MoistAir,
  moistAir,
  standardAirDensity,
  standardPressure,
  traversePoints,
} from '../../../src/calc/index.ts';

/** What every instrument would show of one and the same flow, kg/s of dry air, and what the methods make of it. */
function everyMethod(flow: number, air: MoistAir): readonly AirflowFound[] {
  const actual = flow * air.specificVolume;
  const standard = flow / standardAirDensity;
  const unaware = actual * Math.sqrt(air.density / standardAirDensity);
  const round = { shape: 'round', diameter: 0.4 } as const;
  const points = traversePoints(round);
  const pressure = (air.density * (actual / points.area) ** 2) / 2;
  // A fan whose volume is the true one at 150 Pa of sea-level air, so at less of the thinner air here.
  const statics = [100, 200];
  const flows = [1.1 * actual, 0.9 * actual];
  const external = 150 * (air.pressure / standardPressure(0));
  return [
    airflowFromReadout({ volumeFlow: standard, shows: 'sensed', ways: ['standard'] }),
    airflowFromFanTable({
      table: { statics, speeds: [{ name: 'one', flows }] },
      column: 0,
      motor: 'fixedSpeed',
      supplyStatic: 0.4 * external,
      returnStatic: -0.6 * external,
      pressure: air.pressure,
      air,
    }),
    airflowFromTraverse({
      section: round,
      instrument: 'pitot',
      readings: points.lines.map((line) => line.points.map(() => pressure)),
      air,
      straight: null,
    }),
    airflowFromTemperatureRise({
      heat: { kind: 'power', power: flow * (heatDryAir + heatVapor * air.humidityRatio) * 15 - 400 },
      blower: { power: 400 },
      enteringDryBulb: air.dryBulb,
      leavingDryBulb: air.dryBulb + 15,
      humidityRatio: air.humidityRatio,
      probes: 'several',
      probeLimit: 0.5,
      speed: 'cooling',
    }),
    airflowFromFlowGrid({
      plates: [unaware / 1.2 / 2, unaware / 1.2 / 2],
      shownAs: 'uncorrected',
      pressureNormal: 1.44 * 40,
      pressureWithGrid: 40,
      air,
    }),
    airflowFromPressureMatch({
      fanFlow: 0.9 * unaware,
      shownAs: 'uncorrected',
      pressureNormal: 50,
      pressureReached: 0.81 * 50,
      air,
    }),
    airflowFromHood({
      returns: [0.7 * actual, 0.3 * actual],
      hood: 'powered',
      shownAs: 'actual',
      covers: true,
      ductsTight: true,
      air,
    }),
    airflowFromGrille({
      grilles: [{ readings: [actual / 0.3, null, actual / 0.3], width: 1, height: 0.5, areaFactor: 0.6 }],
      factorFrom: 'traverse',
      air,
    }),
  ];
}

test('every method finds the one flow behind what its instrument shows, at any height and in any air', () => {
  const flows = fc.double({ min: 0.2, max: 1.5, noNaN: true });
  const feet = fc.double({ min: 0, max: 2500, noNaN: true });
  const bulbs = fc.double({ min: 10, max: 30, noNaN: true });
  fc.assert(
    fc.property(flows, feet, bulbs, (flow, altitude, dryBulb) => {
      const air = moistAir({ dryBulb, relativeHumidity: 0.5, pressure: standardPressure(altitude) });
      const answers = everyMethod(flow, air);
      for (const { method, dryAirFlow } of answers) {
        expect(Math.abs(dryAirFlow / flow - 1), method).toBeLessThan(1e-9);
      }
      const mean = combineAirflows(answers);
      expect(mean.dryAirFlow / flow).toBeCloseTo(1, 9);
      expect([mean.consistent, mean.birge, mean.disagreements, mean.leftOut]).toEqual([
        true,
        1,
        [],
        [{ method: 'grille', why: 'partial' }],
      ]);
    }),
  );
});
