/** What a method has worked out on its way to the airflow, for the head of its ledger. */
import type { FanTableFound } from '~/calc/airflow/fanTable.ts';
import type { FlowGridFound } from '~/calc/airflow/flowGrid.ts';
import type { AirflowFound } from '~/calc/airflow/found.ts';
import type { GrilleVaneFound } from '~/calc/airflow/grille.ts';
import type { TemperatureRiseFound } from '~/calc/airflow/heatRise.ts';
import type { AirflowMethod } from '~/calc/airflow/methods.ts';
import type { PressureMatchFound } from '~/calc/airflow/pressureMatch.ts';
import type { TraverseFound } from '~/calc/airflow/traverse.ts';
import { differenceUnit, displayUnit, toSi } from '~/job/units.ts';
import type { LedgerLine } from '~/parts/Ledger.tsx';
import { airflowDetails as words } from '~/words/en/airflowResult.ts';
import { system } from '../jobStore.ts';
import { inUnitOf, joined, ofKind, type Shown } from '../show.ts';
import { fine } from './flowText.ts';

type Details = readonly LedgerLine[];

const factor = (value: number): Shown => inUnitOf(value, 'one', 3);

function fanTable({ externalStatic, tableStatic, columns }: FanTableFound): Details {
  const others = columns.length > 1 ? columns : [];
  return [
    { name: words.external, ...ofKind('airPressure', externalStatic) },
    ...(Math.abs(tableStatic / externalStatic - 1) > 0.005
      ? [{ name: words.tableStatic, ...ofKind('airPressure', tableStatic) }]
      : []),
    ...others.flatMap((flow, index) =>
      flow === null ? [] : [{ name: words.speed(index), ...ofKind('volumeFlow', flow) }],
    ),
  ];
}

function temperatureRise({ heat, rise, perKelvin }: TemperatureRiseFound): Details {
  const unit = differenceUnit(displayUnit.temperature[system.value]);
  const degree = toSi(1, unit);
  return [
    { name: words.heat, ...inUnitOf(heat, system.value === 'ip' ? 'btuh' : 'kw') },
    { name: words.rise, ...inUnitOf(rise, unit) },
    { name: words.perDegree(joined(inUnitOf(degree, unit, 0))), ...fine(-perKelvin * degree) },
  ];
}

function traverse({ meanVelocity, area, at }: TraverseFound): Details {
  const name = at === 'standard' ? words.standardVelocity : words.meanVelocity;
  return [
    { name, ...inUnitOf(meanVelocity, displayUnit.velocity[system.value], system.value === 'ip' ? 0 : 2) },
    { name: words.area, ...inUnitOf(area, displayUnit.area[system.value], system.value === 'ip' ? 2 : 3) },
  ];
}

function grille({ flows }: GrilleVaneFound): Details {
  if (flows.length < 2) return [];
  return flows.flatMap((flow, index) =>
    flow === null ? [] : [{ name: words.grille(index), ...ofKind('volumeFlow', flow) }],
  );
}

const byMethod: Readonly<Partial<Record<AirflowMethod, (answer: never) => Details>>> = {
  fanTable,
  flowGrid: ({ correction }: FlowGridFound) => [{ name: words.correction, ...factor(correction) }],
  traverse,
  temperatureRise,
  pressureMatch: ({ extrapolated }: PressureMatchFound) =>
    extrapolated === 1 ? [] : [{ name: words.extrapolated, ...factor(extrapolated) }],
  grille,
};

export function detailsOf(answer: AirflowFound): Details {
  return byMethod[answer.method]?.(answer as never) ?? [];
}
