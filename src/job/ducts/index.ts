/** The ducts outside the rooms that a job describes, and what is still needed of them. */
import { atticTemperatures, type DuctRun, type Ducts } from '../../calc/ductGain.ts';
import { moistAir } from '../../calc/moistAir.ts';
import type { MoistAir } from '../../calc/types.ts';
import { btuPerHour, fahrenheitDegree, foot } from '../../calc/units.ts';
import { chosen, joinChoices } from '../choices.ts';
import { entered, readEntered } from '../entered.ts';
import { joinQuantities } from '../quantities.ts';
import type { Job, QuantityKey } from '../types.ts';
import { ductChoices } from './choices.ts';
import { ductQuantities } from './quantities.ts';

joinQuantities(ductQuantities);
joinChoices(ductChoices);

/** What a system makes between its probes, net, and the air at both of them. */
export interface AtTheCoil {
  readonly entering: MoistAir;
  readonly leavingDryBulb: number;
  readonly dryAirFlow: number;
  readonly total: number;
}

export type DuctNeed = 'ducts.supplyArea' | 'ducts.insulation' | 'ducts.where' | 'ducts.around';

export interface DuctsOfJob {
  /** `null` while something is needed or cannot be read, or nothing is measured. */
  readonly input: Ducts | null;
  readonly needs: readonly DuctNeed[];
  /** The first figure that was typed and cannot be read: nothing is worked out around it. */
  readonly bad: QuantityKey | null;
}

/**
 * Of a duct's wall with the air films on both sides, ft²·h·°F/Btu as the wrap names it. A bare one has its films alone.
 * Common practice, no source.
 */
const resistances = { bare: 1, r4: 4.2, r6: 6, r8: 8 } as const;
const perResistance = (foot ** 2 * fahrenheitDegree) / btuPerHour;

/** What the rooms get back of what is lost around them: 0.10 from an attic; see `ductStandard` in the bibliography. */
const regainFromAttic = 0.1;

/** What is around the ducts, °C: as typed, else an attic of that roof on a design day; `null` where neither is said. */
export function aroundDucts(job: Job): number | null {
  const where = chosen(job, 'ducts.where');
  const usual = where === undefined || where === 'other' ? null : atticTemperatures[where];
  return entered(job, 'ducts.around') ?? usual;
}

export function ductsOf(job: Job, coil: AtTheCoil | null): DuctsOfJob {
  const keys = Object.keys(ductQuantities) as (keyof typeof ductQuantities)[];
  const bad = keys.find((key) => readEntered(job, key).state === 'bad') ?? null;
  const area = entered(job, 'ducts.supplyArea');
  const insulation = chosen(job, 'ducts.insulation');
  const where = chosen(job, 'ducts.where');
  const around = aroundDucts(job);
  const needs: DuctNeed[] = [
    ...(area === null ? (['ducts.supplyArea'] as const) : []),
    ...(insulation === undefined ? (['ducts.insulation'] as const) : []),
    ...(around === null ? ([where === 'other' ? 'ducts.around' : 'ducts.where'] as const) : []),
  ];
  if (bad || coil === null || area === null || insulation === undefined || around === null) {
    return { input: null, needs, bad };
  }
  const { entering } = coil;
  const dewPoint = Math.min(around, entered(job, 'ducts.dewPoint') ?? entering.dewPoint);
  const air = moistAir({ dryBulb: around, dewPoint, pressure: entering.pressure });
  const run = (surface: number, leakage: number): DuctRun => ({
    area: surface,
    resistance: resistances[insulation] * perResistance,
    leakage,
    around: air,
  });
  const input: Ducts = {
    supply: run(area, entered(job, 'ducts.supplyLeakage') ?? 0),
    return: run(entered(job, 'ducts.returnArea') ?? 0, entered(job, 'ducts.returnLeakage') ?? 0),
    dryAirFlow: coil.dryAirFlow,
    total: coil.total,
    supplyDryBulb: coil.leavingDryBulb,
    room: entering,
    regain: where === undefined || where === 'other' ? 0 : regainFromAttic,
  };
  return { input, needs, bad };
}
