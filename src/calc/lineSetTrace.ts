/** The working of a line set, step by step. */
import type { LiquidLine, VaporLine } from './lineSetTypes.ts';
import type { LiquidRun } from './liquidLine.ts';
import { drawnCopper, type PipeDrop } from './pipeDrop.ts';
import { bubblePointOf, dewPointOf, type RefrigerantState } from './refrigerant.ts';
import { amount } from './trace.ts';
import type { Trace } from './types.ts';
import { standardGravity } from './units.ts';
import type { VaporRun } from './vaporLine.ts';

export function traceVaporLine(
  run: VaporRun,
  entering: RefrigerantState,
  pipe: PipeDrop,
  line: VaporLine,
  t: Trace,
): void {
  tracePipe(run, entering, pipe, t);
  const [before, after] = [amount('p₁', 'pressure', entering.pressure), amount('p₂', 'pressure', line.pressure)];
  const friction = amount('Δp', 'pressure', pipe.drop);
  t({
    id: 'lineSet.vaporPressure',
    equation: run.lift === 0 ? 'p₂ = √(p₁² − 2·p₁·Δp)' : 'p₂ = √(p₁² − 2·p₁·(Δp − ρ·g·z))',
    puts: [before, friction, ...(run.lift === 0 ? [] : columnOf(run, entering))],
    gives: after,
    source: 'definition',
  });
  const dewPoint = dewPointOf(run.refrigerant, entering.pressure);
  t({
    id: 'lineSet.dewDrop',
    equation: 'Δt = t(p₁) − t(p₂)',
    puts: [amount('t(p₁)', 'temperature', dewPoint), amount('t(p₂)', 'temperature', dewPoint - line.dewDrop)],
    gives: amount('Δt', 'temperatureDifference', line.dewDrop),
    source: 'refrigerants',
  });
  t({
    id: 'lineSet.density',
    equation: 'ρ₂ = ρ(p₂, h₁)',
    puts: [after, amount('h₁', 'enthalpy', entering.enthalpy)],
    gives: amount('ρ₂', 'density', line.density),
    source: 'refrigerants',
  });
}

export function traceLiquidLine(
  run: LiquidRun,
  leaving: RefrigerantState,
  pipe: PipeDrop,
  line: LiquidLine,
  t: Trace,
): void {
  tracePipe(run, leaving, pipe, t);
  const after = amount('p₄', 'pressure', line.pressure);
  t({
    id: 'lineSet.liquidPressure',
    equation: 'p₄ = p₃ − Δp − ρ·g·z',
    puts: [amount('p₃', 'pressure', leaving.pressure), amount('Δp', 'pressure', pipe.drop), ...columnOf(run, leaving)],
    gives: after,
    source: 'definition',
  });
  t({
    id: 'lineSet.subcoolingLeft',
    equation: 'Δtᵤ = t(p₄) − t₃',
    puts: [
      amount('t(p₄)', 'temperature', bubblePointOf(run.refrigerant, line.pressure)),
      amount('t₃', 'temperature', leaving.temperature),
    ],
    gives: amount('Δtᵤ', 'temperatureDifference', line.subcoolingLeft),
    source: 'refrigerants',
  });
}

const columnOf = ({ lift }: { readonly lift: number }, { density }: RefrigerantState) => [
  amount('ρ', 'density', density),
  amount('g', 'ratio', standardGravity),
  amount('z', 'length', lift),
];

const frictionEquations = {
  laminar: 'f = 64/Re',
  between: 'f on a straight line over Re, from 64/Re at 2300 to 1/√f = −2·lg(ε/(3.7·D) + 2.51/(Re·√f)) at 4000',
  turbulent: '1/√f = −2·lg(ε/(3.7·D) + 2.51/(Re·√f))',
} as const satisfies Record<PipeDrop['regime'], string>;

function tracePipe(
  { massFlow, diameter, length }: VaporRun | LiquidRun,
  { density, viscosity }: RefrigerantState,
  pipe: PipeDrop,
  t: Trace,
): void {
  const bore = amount('D', 'diameter', diameter);
  const thick = amount('ρ', 'density', density);
  const velocity = amount('v', 'velocity', pipe.velocity);
  const reynolds = amount('Re', 'count', pipe.reynolds);
  const factor = amount('f', 'ratio', pipe.frictionFactor);
  t({
    id: 'lineSet.velocity',
    equation: 'v = 4·ṁ/(π·D²·ρ)',
    puts: [amount('ṁ', 'massFlow', massFlow), bore, thick],
    gives: velocity,
    source: 'definition',
  });
  t({
    id: 'lineSet.reynolds',
    equation: 'Re = ρ·v·D/μ',
    puts: [thick, velocity, bore, amount('μ', 'viscosity', viscosity)],
    gives: reynolds,
    source: 'definition',
  });
  t({
    id: 'lineSet.frictionFactor',
    equation: frictionEquations[pipe.regime],
    puts: pipe.regime === 'laminar' ? [reynolds] : [reynolds, amount('ε', 'diameter', drawnCopper), bore],
    gives: factor,
    source: 'colebrook',
  });
  t({
    id: 'lineSet.friction',
    equation: 'Δp = f·(L/D)·ρ·v²/2',
    puts: [factor, amount('L', 'length', length), bore, thick, velocity],
    gives: amount('Δp', 'pressure', pipe.drop),
    source: 'colebrook',
  });
}
