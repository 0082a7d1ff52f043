/**
 * Throws numbers by chance at every calculation: a million times at those on a few numbers, ten thousand times at those on tables
 * and records. Each must give numbers that are numbers, or throw a `CalcError`, and be done at once. `npm run fuzz`, or with a
 * seed and a share of the work: `npm run fuzz -- 7 0.1`. Outside the test command.
 */
import { CalcError } from '../../src/calc/index.ts';
import { type Chance, chance } from './chance.ts';
import { fewNumbers } from './fewNumbers.ts';
import { tablesAndLogs } from './tablesAndLogs.ts';

const [seed = '1', share = '1'] = process.argv.slice(2);
/** s. No single answer takes as long; more means that it would never have come. */
const longest = 2;

/** The first number in a value that is none, with its path; '' when all are. */
function notANumber(value: unknown, path = ''): string {
  if (typeof value === 'number') return Number.isFinite(value) ? '' : `${path || 'the answer'} is ${value}`;
  if (typeof value !== 'object' || value === null) return '';
  for (const key of Object.keys(value)) {
    const found = notANumber((value as Record<string, unknown>)[key], `${path}.${key}`);
    if (found !== '') return found;
  }
  return '';
}

interface Tally {
  answers: number;
  refused: number;
  slowest: number;
  faults: string[];
}

function hammer(call: (c: Chance) => unknown, times: number): Tally {
  const tally: Tally = { answers: 0, refused: 0, slowest: 0, faults: [] };
  for (let turn = 0; turn < times && tally.faults.length < 3; turn++) {
    const start = performance.now();
    // Each turn has a seed of its own, so that a fault can be had again alone.
    const own = Number(seed) * 1e7 + turn;
    try {
      const fault = notANumber(call(chance(own)));
      tally.answers++;
      if (fault) tally.faults.push(`seed ${own}: ${fault}`);
    } catch (error) {
      if (error instanceof CalcError) tally.refused++;
      else tally.faults.push(`seed ${own}: ${error}`);
    }
    tally.slowest = Math.max(tally.slowest, performance.now() - start);
  }
  if (tally.slowest > longest * 1000) tally.faults.push(`one answer took ${Math.round(tally.slowest)} ms`);
  return tally;
}

let faults = 0;
for (const [cases, times] of [
  [fewNumbers, 1e6],
  [tablesAndLogs, 1e4],
] as const) {
  for (const [name, call] of Object.entries(cases)) {
    const { answers, refused, slowest, faults: found } = hammer(call, Math.round(times * Number(share)));
    console.log(
      `${name.padEnd(28)} ${String(answers).padStart(8)} answers ${String(refused).padStart(8)} refused, slowest ${slowest.toFixed(1)} ms`,
    );
    for (const fault of found) console.log(`    ${fault}`);
    faults += found.length;
    // A calculation that refuses everything was not tried.
    if (answers === 0) {
      console.log('    never an answer');
      faults++;
    }
  }
}
process.exitCode = faults > 0 ? 1 : 0;
