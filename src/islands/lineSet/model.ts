/** What the sheet on long lines shows of a job: the lines as the calculation takes them, what comes of them, what the bar says. */
import { computed } from '@preact/signals';
import { lineSet } from '~/calc/lineSet.ts';
import type { LineFactor, LineSet } from '~/calc/lineSetTypes.ts';
import { attempt } from '~/calc/outcome.ts';
import { chosen } from '~/job/choices.ts';
import { linesOf, meteringOf } from '~/job/lineSet.ts';
import type { QuantityKey } from '~/job/types.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { joinLineSetWords } from '~/words/en/joinLineSet.ts';
import { lineBar, lineNeeds } from '~/words/en/lineSet.ts';
import { problemInBar } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { barWords } from '~/words/en/sheet.ts';
import { amountOf, problemParts, readOf, typing } from '../fields.ts';
import { job } from '../jobStore.ts';
import type { BarWords } from '../SheetBar.tsx';
import { sheetSteps } from '../sheetSteps.ts';
import { inUnitOf, joined } from '../show.ts';

joinLineSetWords();

export const lineSteps = sheetSteps(['lineSystem', 'lineTubes', 'lineLengths', 'lineMaker', 'lineRunning']);
export type LineStep = (typeof lineSteps.steps)[number];
export const { isDesk } = lineSteps;

export const lines = computed(() => linesOf(job.value));
/** What comes of the lines; `null` while something is missing. */
export const outcome = computed(() => {
  const { input } = lines.value;
  return input && attempt(() => lineSet(input));
});
export const found = computed((): LineSet | null => (outcome.value?.ok ? outcome.value.value : null));
export const isPackaged = computed(() => chosen(job.value, 'equipment.kind') === 'packaged');

/** A share to a tenth of a per cent; the ends of a band are rounded outward. */
export const share = (fraction: number) => joined(inUnitOf(fraction, 'percent', 1));
const outward = (fraction: number, round: (value: number) => number) => share(round(fraction * 1000 - 1e-9) / 1000);
export const ends = ({ low, high }: LineFactor): readonly [string, string] => [
  outward(low, Math.floor),
  outward(high, Math.ceil),
];

/** Why nothing is worked out for this kind of system, told before anything else is asked. */
export const refusal = computed((): 'packaged' | 'meteringOutdoors' | null => {
  if (isPackaged.value) return 'packaged';
  return meteringOf(job.value) === 'outdoors' ? 'meteringOutdoors' : null;
});

/** A typed value with its unit, for a line of the ledger; '' when nothing usable is typed. */
function amountLine(key: QuantityKey): string {
  const read = readOf(key);
  return read.state === 'read' ? amountOf(key, read.si) : '';
}

function liftLine(): string {
  const read = readOf('lineSet.lift');
  if (read.state !== 'read' || read.si === 0) return '';
  const height = amountOf('lineSet.lift', Math.abs(read.si));
  return read.si > 0 ? lineBar.above(height) : lineBar.below(height);
}

const kindLine = () => {
  const kind = chosen(job.value, 'equipment.kind');
  return kind ? choiceWords['equipment.kind'].options[kind].toLowerCase() : '';
};

const summaries: Readonly<Record<LineStep, () => readonly string[]>> = {
  lineSystem: () => [chosen(job.value, 'refrigerant') ?? '', amountLine('nominalCapacity'), kindLine()],
  lineTubes: () => {
    const vapor = chosen(job.value, 'lineSet.vaporTube');
    return vapor ? [`${vapor}, ${chosen(job.value, 'lineSet.liquidTube') ?? '3/8'}\u00a0in`] : [];
  },
  lineLengths: () => [amountLine('lineSet.length'), liftLine()],
  lineMaker: () => [amountLine('lineSet.makerFactor'), amountLine('lineSet.maximumLength')],
  lineRunning: () => [amountLine('lineSet.evaporating'), amountLine('lineSet.subcooling')],
};
const nothingSaid: Readonly<Record<LineStep, string>> = {
  lineSystem: lineBar.notSaid,
  lineTubes: lineBar.notSaid,
  lineLengths: lineBar.notSaid,
  lineMaker: lineBar.nothingSaid,
  lineRunning: lineBar.assumed,
};

export const summaryOf = (step: LineStep): string => summaries[step]().filter(Boolean).join(' · ') || nothingSaid[step];

export const needText = computed(() => lines.value.needs.map((need) => lineNeeds[need]).join(', '));

export const bar = computed((): BarWords => {
  const { bad, needs } = lines.value;
  if (bad && typing.value !== bad) {
    const read = readOf(bad);
    const small = read.state === 'bad' ? problemInBar(problemParts(bad), read.code) : '';
    const big = `${barWords.check} ${quantityWords[bad].inSentence}`;
    return { big, sentence: true, small, field: `field-${bad}` };
  }
  if (outcome.value && !outcome.value.ok) return { big: lineBar.cannot, sentence: true, small: lineBar.cannotSmall };
  const result = found.value;
  if (result?.factor) {
    const [low, high] = ends(result.factor);
    const small = result.factor.basis === 'maker' ? lineBar.byMaker : lineBar.between(low, high);
    return { big: share(result.factor.factor), after: lineBar.left, sentence: false, small };
  }
  if (refusal.value) return { big: lineBar.refused, sentence: true, small: lineBar.reasons[refusal.value] };
  if (result) return { big: lineBar.beyond, sentence: true, small: lineBar.beyondSmall };
  if (needs.length === 4) return { big: lineBar.start, sentence: true, small: lineBar.fourFigures };
  return { big: barWords.stillNeeded, sentence: true, small: needText.value };
});
