/** Exercises on how sure: limits put together, and a share held against the line. */
import { budget } from '../../calc/confidence/budget.ts';
import { amount } from '../../calc/trace.ts';
import type { ErrorSource, Step } from '../../calc/types.ts';
import type { Draw } from './draw.ts';
import type { Exercise } from './types.ts';

const thirdRoot = Math.sqrt(3);
const limited = <Input extends string>(input: Input, half: number): ErrorSource<Input> => ({
  name: input,
  u: half / thirdRoot,
  shape: 'rectangular',
  degreesOfFreedom: null,
  moves: { [input]: 1 } as Partial<Record<Input, number>>,
});

/** Relative standard uncertainty of a capacity from the limits of the airflow and of the drop in enthalpy. */
export function budgetExercise(draw: Draw): Exercise {
  const airflow = draw.step(0.03, 0.1, 0.01);
  const drop = draw.step(0.03, 0.12, 0.01);
  const sources = [limited('airflow', airflow), limited('drop', drop)] as const;
  const { u } = budget(({ airflow: flow, drop: difference }) => flow * difference, { airflow: 1, drop: 1 }, [
    ...sources,
  ] as ErrorSource<'airflow' | 'drop'>[]);
  const each = (symbol: string, half: number): Step => ({
    id: 'uncertainty.limit',
    equation: `u${symbol} = a${symbol}/√3`,
    puts: [amount(`a${symbol}`, 'fraction', half)],
    gives: amount(`u${symbol}`, 'fraction', half / thirdRoot),
    source: 'uncertaintyGuide',
  });
  const steps = [
    each('₁', airflow),
    each('₂', drop),
    {
      id: 'uncertainty.combined',
      equation: 'u = √(u₁² + u₂²)',
      puts: [amount('u₁', 'fraction', airflow / thirdRoot), amount('u₂', 'fraction', drop / thirdRoot)],
      gives: amount('u', 'fraction', u),
      source: 'uncertaintyGuide',
    },
  ] as const satisfies readonly Step[];
  return {
    kind: 'budget',
    given: [
      { name: 'airflowLimit', kind: 'fraction', value: airflow },
      { name: 'dropLimit', kind: 'fraction', value: drop },
    ],
    grid: null,
    answers: [{ name: 'uncertainty', kind: 'fraction', value: u }],
    verdict: null,
    steps,
  };
}

/** The range of a share with nine chances in ten on either side, and what it says of the line. */
export function verdictExercise(draw: Draw): Exercise {
  const share = draw.step(0.7, 1.04, 0.01);
  const u = draw.step(0.03, 0.09, 0.005);
  const line = draw.one([0.9, 0.9, 0.85, 0.95]);
  const source: ErrorSource<'share'> = {
    name: 'share',
    u,
    shape: 'normal',
    degreesOfFreedom: null,
    moves: { share: 1 },
  };
  const { interval } = budget(({ share: value }) => value, { share }, [source]);
  const k = (interval.high - share) / u;
  const end = (symbol: string, sign: string, value: number): Step => ({
    id: `uncertainty.${symbol === 'rₗ' ? 'low' : 'high'}`,
    equation: `${symbol} = r ${sign} k·u`,
    puts: [amount('r', 'fraction', share), amount('k', 'ratio', k), amount('u', 'fraction', u)],
    gives: amount(symbol, 'fraction', value),
    source: 'uncertaintyGuide',
  });
  // Ends are rounded outward to whole per cents, as on every sheet.
  const low = Math.floor(100 * interval.low + 1e-9) / 100;
  const high = Math.ceil(100 * interval.high - 1e-9) / 100;
  return {
    kind: 'verdict',
    given: [
      { name: 'share', kind: 'fraction', value: share },
      { name: 'uncertainty', kind: 'fraction', value: u },
      { name: 'line', kind: 'fraction', value: line },
    ],
    grid: null,
    answers: [
      { name: 'low', kind: 'fraction', value: low },
      { name: 'high', kind: 'fraction', value: high },
    ],
    verdict: low >= line ? 'meets' : high < line ? 'short' : 'cannotTell',
    steps: [end('rₗ', '−', interval.low), end('rₕ', '+', interval.high)],
  };
}
