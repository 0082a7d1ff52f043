import { expect } from 'vitest';
import {
  type AirflowFound,
  type AirThere,
  CalcError,
  type FanTable,
  type FanTableReading,
  inchOfWater,
  type Step,
  standardAirDensity,
} from '../../../src/calc/index.ts';

/** Air as dense as standard air, all of it counted as dry. */
export const standardAir: AirThere = { density: standardAirDensity, specificVolume: 1 / standardAirDensity };
export const airOf = (density: number): AirThere => ({ density, specificVolume: 1 / density });

/** The `CalcError` that a piece of work throws, as code and quantity. */
export function errorOf(work: () => unknown): readonly [string, string] | null {
  try {
    work();
    return null;
  } catch (error) {
    if (error instanceof CalcError) return [error.code, error.quantity];
    throw error;
  }
}

export function stepsOf(work: (t: (step: Step) => void) => unknown): readonly Step[] {
  const steps: Step[] = [];
  work((step) => steps.push(step));
  return steps;
}

export const codes = ({ remarks }: { readonly remarks: readonly { readonly code: string }[] }) =>
  remarks.map(({ code }) => code);

/** Each remark: its code, its weight, and its amounts as symbol and figure. */
export const said = ({ remarks }: AirflowFound) =>
  remarks.map(({ code, weight, amounts }) => [
    code,
    weight,
    ...amounts.map(({ symbol, value }) => [symbol, Number(value.toPrecision(6))]),
  ]);

/** The standard uncertainty of a half-width, each figure within it as likely as any other. */
export const rectangle = (halfWidth: number) => halfWidth / Math.sqrt(3);
/** Each cause with what of it reaches the airflow, as a fraction with its sign. */
export const reaching = ({ sources }: AirflowFound) =>
  Object.fromEntries(sources.map(({ name, u, moves }) => [name, u * (moves.airflow ?? 0)]));
/** Holds an answer to the causes that it has, and to what they come to together. */
export function expectCauses(found: AirflowFound, causes: Readonly<Record<string, number>>): void {
  expect(Object.keys(reaching(found)).sort()).toEqual(Object.keys(causes).sort());
  for (const [name, reach] of Object.entries(causes)) expect(reaching(found)[name], name).toBeCloseTo(reach, 9);
  expect(found.u).toBeCloseTo(Math.hypot(...Object.values(causes)), 9);
}

/** An invented table, in. w.c. and m³/s: a blower that falls, and one that holds its airflow. */
export const fanTable: FanTable = {
  statics: [0.1, 0.3, 0.5, 0.7, 0.9].map((one) => one * inchOfWater),
  speeds: [
    { name: 'high', flows: [0.66, 0.62, 0.57, 0.5, null] },
    { name: 'constant', flows: [0.57, 0.572, 0.568, 0.566, 0.56] },
  ],
};

/** The first column of that table, read halfway between its first rows. */
export const fanReading: FanTableReading = {
  table: fanTable,
  column: 0,
  motor: 'fixedSpeed',
  supplyStatic: 50,
  returnStatic: -50,
  pressure: 101_325,
  air: standardAir,
};
