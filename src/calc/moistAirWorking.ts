import type { MoistAirInput } from './moistAir.ts';
import type { MoistAir, Trace } from './types.ts';

/** The working of a state of moist air, step by step. */
export function traceMoistAir(_input: MoistAirInput, _air: MoistAir, _trace: Trace): void {}
