import { CalcError } from '../../src/calc/index.ts';

/** The code of the `CalcError` that a piece of work throws; anything else that it throws is passed on. */
export function codeOf(work: () => unknown): string | null {
  try {
    work();
    return null;
  } catch (error) {
    if (error instanceof CalcError) return error.code;
    throw error;
  }
}
