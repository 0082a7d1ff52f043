import { traceLiquidLine } from './lineSetTrace.ts';
import type { LiquidLine } from './lineSetTypes.ts';
import { pipeDrop } from './pipeDrop.ts';
import { bubblePointOf, type Refrigerant, type RefrigerantState } from './refrigerant.ts';
import type { Trace } from './types.ts';
import { standardGravity } from './units.ts';

export interface LiquidRun {
  readonly refrigerant: Refrigerant;
  readonly massFlow: number;
  readonly diameter: number;
  /** Fittings counted in, m. */
  readonly length: number;
  /** Of the metering device above the outdoor unit, m: the liquid is lifted. */
  readonly lift: number;
}

/**
 * What is left of the subcooling before the metering device: friction and the weight of the column take of the pressure, and
 * the bubble point falls with it, while the liquid keeps its temperature. A filter drier is not in it. Throws a `CalcError`
 * where the pressure leaves the rows of the refrigerant.
 */
export function liquidLine(run: LiquidRun, leaving: RefrigerantState, t?: Trace): LiquidLine {
  const { refrigerant, massFlow, diameter, length, lift } = run;
  const { density, viscosity } = leaving;
  const pipe = pipeDrop({ massFlow, density, viscosity, diameter, length });
  const column = density * standardGravity * lift;
  const pressure = leaving.pressure - pipe.drop - column;
  const subcoolingLeft = bubblePointOf(refrigerant, pressure) - leaving.temperature;
  const line: LiquidLine = {
    friction: pipe.drop,
    static: column,
    velocity: pipe.velocity,
    pressure,
    subcoolingLeft,
    flashes: subcoolingLeft < 0,
  };
  if (t) traceLiquidLine(run, leaving, pipe, line, t);
  return line;
}
