import type { RefObject } from 'preact';
import type { AirPoint, ChartFrame } from '~/charts/moistAir/frame.ts';
import { readingWords } from '~/words/en/moistAir.ts';
import { Aim } from './Aim.tsx';
import { airOfSpot, points } from './points.ts';
import { spokenAir } from './said.ts';
import { cross, frame } from './view.ts';

/** The cross-hair: what it reads stands beside the chart. By keyboard it begins at the first point. */
export function CrossHair({ svg }: { svg: RefObject<SVGSVGElement> }) {
  const paper = frame.value;
  if (!paper) return null;
  const spot = cross.value;
  const air = airOfSpot(spot ?? start(paper));
  return (
    <Aim
      frame={paper}
      svg={svg}
      air={air}
      name={readingWords.crossName}
      said={spot ? spokenAir(air, 'relativeHumidity') : readingWords.away}
      away={spot === null}
      onMove={(to) => {
        cross.value = to;
      }}
      onEscape={() => {
        cross.value = null;
      }}
    />
  );
}

function start({ dryBulb, humidityRatio }: ChartFrame): AirPoint {
  const first = points.value[0]?.air;
  return first ?? { dryBulb: (dryBulb[0] + dryBulb[1]) / 2, humidityRatio: (humidityRatio[0] + humidityRatio[1]) / 6 };
}
