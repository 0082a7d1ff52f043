/**
 * A whole test of the invented system: what it makes, what it should make here and now, and whether the difference means anything.
 *
 *     node examples/oneAssessment.ts
 */
import { assess, btuPerHour, cubicFootPerMinute, fromFahrenheit } from '../src/calc/index.ts';
import { inventedSystem } from './inventedSystem.ts';

const { measured, expected, ratio, verdict, improvements, remarks } = assess({
  ...inventedSystem,
  entering: { dryBulb: fromFahrenheit(75), relativeHumidity: 0.5, wetBulb: null },
  leaving: { dryBulb: fromFahrenheit(56), relativeHumidity: 0.88, wetBulb: null },
  airflow: { volumeFlow: 1180 * cubicFootPerMinute, place: 'entering', kind: 'actual', limit: 0.07, sources: null },
  outdoorDryBulb: fromFahrenheit(91),
});

const capacity = (watts: number) => `${Math.round(watts / btuPerHour)} Btu/h`;

// `assess` never throws: each result is there, or waits for a reading, or has a problem of its own.
if (measured.ok && expected.ok && ratio.ok && verdict.ok) {
  const { low, high } = ratio.value.interval;
  console.log(`makes        ${capacity(measured.value.total)}`);
  console.log(`should make  ${capacity(expected.value.total)}`);
  console.log(`ratio        ${ratio.value.value.toFixed(3)}, between ${low.toFixed(3)} and ${high.toFixed(3)}`);
  const { outcome, because } = verdict.value;
  console.log(`verdict      ${outcome}${because ? `: ${because}` : ''}`);
  console.log(`next         ${improvements[0]?.change ?? 'nothing would make it surer'}`);
} else {
  console.log(JSON.stringify({ measured, expected, ratio, verdict }, null, 1));
}
for (const { weight, about, code } of remarks) console.log(`${weight.padEnd(12)} ${about}: ${code}`);
