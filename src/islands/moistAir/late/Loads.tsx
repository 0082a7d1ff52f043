import type { CoilLoad, MoistAir } from '~/calc/types.ts';
import type { Process, ProcessKind, ProcessResult } from '~/job/processes.ts';
import { Echo } from '~/parts/Echo.tsx';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { processWords } from '~/words/en/moistAir.ts';
import { processSteps } from '~/words/en/moistAirSteps.ts';
import { system } from '../../jobStore.ts';
import { capacity, inUnitOf, ofKind, percent, type Shown } from '../../show.ts';
import { nameOfPoint } from '../points.ts';
import { WorkingFold } from './WorkingFold.tsx';

/** What a process comes to: heat in or out and water out for its airflow, or per mass of dry air while none is stated. */
export function Loads({ process, result }: { process: Process; result: ProcessResult }) {
  const caption = processSteps.loads(processWords.kinds[process.kind]);
  if (process.kind === 'mixing') {
    return (
      <>
        <Echo>{processSteps.adiabatic}</Echo>
        <Ledger caption={caption} lines={mixed(process, result)} />
        <WorkingFold of={process.key} />
      </>
    );
  }
  return (
    <>
      <Ledger caption={caption} lines={result.load ? ownLoads(result.load, process.kind) : perMass(process, result)} />
      {!result.load && <Echo>{processSteps.typeAirflow}</Echo>}
      {result.load && <WorkingFold of={process.key} />}
    </>
  );
}

const massFlow = (si: number): Shown =>
  inUnitOf(si, system.value === 'ip' ? 'lbPerHour' : 'kgPerS', system.value === 'ip' ? 0 : 3);
export const water = (si: number): Shown =>
  si < 1e-9 ? none : inUnitOf(si, system.value === 'ip' ? 'lbPerHour' : 'kgPerHour', 1);
export const none: Shown = { number: processSteps.none, unit: '' };
/** A watt of a kilowatt is rounding, not heat. */
export const heat = (watts: number, of: number): Shown =>
  Math.abs(watts) < 1e-6 * Math.abs(of) ? none : capacity(watts);

/** The loads of a coil. */
export function ownLoads(load: CoilLoad, kind: Exclude<ProcessKind, 'mixing'> = 'drying'): LedgerLine[] {
  const sign = kind === 'heating' ? -1 : 1;
  const [unit, decimals] = system.value === 'ip' ? (['btuh', 0] as const) : (['kw', 2] as const);
  const lines: LedgerLine[] = [
    { name: processSteps.total[kind], ...capacity(sign * load.total) },
    { name: processSteps.sensible, ...heat(sign * load.sensible, load.total) },
    { name: processSteps.latent, ...heat(sign * load.latent, load.total) },
  ];
  if (kind !== 'heating') lines.push({ name: processSteps.condensate, ...water(load.condensate) });
  if (load.condensate > 1e-9) {
    lines.push({ name: processSteps.condensateHeat, ...inUnitOf(load.condensateEnthalpy, unit, decimals) });
  }
  return [...lines, ...coil(load), { name: processSteps.dryAir, ...massFlow(load.dryAirFlow) }];
}

/** Where the coil's line meets saturation, and the share of the air that misses the coil. */
function coil({ apparatus }: CoilLoad): LedgerLine[] {
  if (!apparatus) return [];
  return [
    { name: processSteps.apparatus, ...ofKind('temperature', apparatus.dewPoint) },
    { name: processSteps.bypass, ...inUnitOf(apparatus.bypassFactor, 'one', 2) },
  ];
}

function perMass({ kind }: Process, { start, end }: ProcessResult): LedgerLine[] {
  const sign = kind === 'heating' ? -1 : 1;
  const unit = system.value === 'ip' ? 'btuPerLbStep' : 'kjPerKg';
  const lines: LedgerLine[] = [
    { name: processSteps.total[kind], ...inUnitOf(sign * (start.enthalpy - end.enthalpy), unit, 2) },
  ];
  const dried = start.humidityRatio - end.humidityRatio;
  if (kind === 'drying') lines.push({ name: processSteps.condensate, ...ratio(dried) });
  return lines;
}

const ratio = (si: number): Shown => inUnitOf(si, system.value === 'ip' ? 'grainsPerLb' : 'gPerKg', 2);

function mixed(process: Process, { share, dryAirFlow, end }: ProcessResult): LedgerLine[] {
  const names = [process.from, process.with].map((key) => (key ? nameOfPoint(key) : ''));
  const shares = [share ?? 0, 1 - (share ?? 0)];
  return [
    ...names.map((name, index) => {
      const [number = '', unit = ''] = percent(shares[index] ?? 0).split('\u00a0');
      return { name: processSteps.share(name), number, unit };
    }),
    ...properties(end),
    { name: processSteps.dryAir, ...massFlow(dryAirFlow ?? 0) },
  ];
}

function properties(air: MoistAir): LedgerLine[] {
  const unit = system.value === 'ip' ? 'degF' : 'degC';
  return [
    { name: processSteps.mixedDryBulb, ...inUnitOf(air.dryBulb, unit) },
    { name: processSteps.mixedWetBulb, ...inUnitOf(air.wetBulb, unit) },
    { name: processSteps.mixedHumidity, ...inUnitOf(air.relativeHumidity, 'percent', 1) },
  ];
}
