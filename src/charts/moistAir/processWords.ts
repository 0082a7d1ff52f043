/** What is written at a process. A sheet may put its own words in the place of any of these. */
import type { MoistAir } from '../../calc/types.ts';
import type { System } from '../../job/types.ts';
import { differenceUnit, displayUnit } from '../../job/units.ts';
import { moistAirChart } from '../../words/en/moistAirChart.ts';
import { amountText, fractionText, inUnit, powerText } from './amounts.ts';
import { type ChartProcess, coilOnChart } from './process.ts';

/** A name and what it comes to. */
export interface Labelled {
  readonly name: string;
  /** Where there is little room. */
  readonly short?: string;
  /** The trade's term, where there is much. */
  readonly term?: string;
  readonly amount: string;
}

export interface ProcessWords {
  readonly entering: Labelled;
  readonly leaving: Labelled;
  readonly coil: Labelled | null;
  readonly sensible: Labelled | null;
  readonly latent: Labelled | null;
  readonly bypass: Labelled | null;
  readonly blower: Labelled | null;
}

/** Dry bulb and relative humidity, as they are read. */
export const readingText = (air: MoistAir, system: System): string =>
  `${amountText('temperature', air.dryBulb, system)}, ${amountText('fraction', air.relativeHumidity, system)}`;

export function processWords(system: System, process: ChartProcess): ProcessWords {
  const { entering, leaving, load } = process;
  const coil = coilOnChart(process);
  const rise = Math.max(coil.entering.dryBulb - entering.dryBulb, leaving.dryBulb - coil.leaving.dryBulb);
  const step = differenceUnit(displayUnit.temperature[system]);
  return {
    entering: { name: moistAirChart.returnAir, amount: readingText(entering, system) },
    leaving: { name: moistAirChart.supplyAir, amount: readingText(leaving, system) },
    coil: coil.apparatus && {
      name: moistAirChart.coil,
      term: moistAirChart.apparatusDewPoint,
      amount: amountText('temperature', coil.apparatus.dryBulb, system),
    },
    bypass: coil.bypassFactor === null ? null : { ...moistAirChart.bypass, amount: fractionText(coil.bypassFactor) },
    sensible: load ? { ...moistAirChart.sensible, amount: powerText(load.sensible, system) } : null,
    latent: load ? { ...moistAirChart.latent, amount: powerText(load.latent, system) } : null,
    blower: rise > 0 ? { name: moistAirChart.blower, amount: `+${inUnit(rise, step)}` } : null,
  };
}
