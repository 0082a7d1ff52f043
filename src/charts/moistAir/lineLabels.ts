/**
 * What is written along the lines. Every family has its own places and is thinned until its labels do not touch one another;
 * what would then touch a label that is already there is left off. Nothing is moved about.
 */
import { fromSi } from '../../job/units.ts';
import { type Box, boxOf, inside, touch } from '../box.ts';
import { axisBoxes } from './axes.ts';
import type { ChartLine, LineLabel } from './families.ts';
import type { ChartFrame } from './frame.ts';
import { type Placer, places } from './labelPlaces.ts';
import { stepOf, unitOf } from './scales.ts';

/** Paper between two labels, px. */
const gap = 3;

/** A family is labelled on every line, or on every second, fifth or tenth. */
const strides = [1, 2, 5, 10] as const;

export const labelBox = (label: LineLabel, letter: number): Box => boxOf({ ...label, anchor: 'middle' }, letter);

/** The lines with what is written along them; nothing is written where `taken` stands. */
export function labelled(frame: ChartFrame, lines: readonly ChartLine[], taken: readonly Box[]): readonly ChartLine[] {
  const boxes: Box[] = [...axisBoxes(frame), ...taken];
  const labels = new Map<ChartLine, LineLabel[]>();
  const put = (line: ChartLine, label: LineLabel | null): boolean => {
    const box = label && labelBox(label, frame.letter);
    if (!box || !inside(box, frame.width, frame.height) || boxes.some((other) => touch(box, other, gap))) return false;
    boxes.push(box);
    labels.set(line, [...(labels.get(line) ?? []), label]);
    return true;
  };

  const saturation = lines.find(({ family }) => family === 'saturation');
  const members = places.map((place) => ({ place, own: lines.filter(({ family }) => family === place.family) }));
  for (const { place, own } of members) {
    for (const [line, label] of thinned(frame, own, place.number(saturation))) put(line, label);
  }
  for (const { place, own } of members)
    place.names.some((name) => fromMiddle(own).some((line) => put(line, name(frame, line))));
  return lines.map((line) => ({ ...line, labels: labels.get(line) ?? [] }));
}

function thinned(frame: ChartFrame, lines: readonly ChartLine[], placer: Placer): [ChartLine, LineLabel][] {
  for (const stride of strides) {
    const placed = lines
      .filter((line) => rank(frame, line) % stride === 0)
      .flatMap((line): [ChartLine, LineLabel][] => {
        const label = placer(frame, line);
        return label ? [[line, label]] : [];
      });
    const boxes = placed.map(([, label]) => labelBox(label, frame.letter));
    // The corner where a family goes over from one edge to the next may be crowded: there one label is left off.
    const crowded = boxes.filter((box, i) => i > 0 && touch(box, boxes[i - 1]!, gap)).length;
    if (crowded < 2) return placed;
  }
  return [];
}

/** Which multiple of its step a line is; of the relative humidities the odd ones come first, for the sake of 50 %. */
function rank(frame: ChartFrame, { family, value }: ChartLine): number {
  if (family === 'relativeHumidity') return Math.round(10 * value) - 1;
  if (family === 'saturation') return 0;
  return Math.round(fromSi(value, unitOf(frame.system, family)) / stepOf(frame, family));
}

/** From the middle of a family outwards. */
function fromMiddle(lines: readonly ChartLine[]): readonly ChartLine[] {
  const off = (line: ChartLine) => Math.abs(lines.indexOf(line) - (lines.length - 1) / 2);
  return [...lines].sort((a, b) => off(a) - off(b));
}
