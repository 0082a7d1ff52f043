import { Air, Blower, Coil, cabinet, duct, paper, Sheet, System } from '../airflow/kit.tsx';
import { linear, oblique, px } from '../scale.ts';

export interface BlowerPictureProps {
  /** Blower heat over what the coil takes out. */
  readonly heat: number;
  readonly words: {
    readonly returned: string;
    readonly behindCoil: string;
    readonly behindBlower: string;
    readonly gross: string;
    readonly net: string;
    readonly heat: string;
    readonly summary: string;
  };
}

const places = { returned: 48, behindCoil: 178, behindBlower: 292 } as const;

/** The stream through coil and blower with the air at three places, and under it what the coil takes out and what is left. */
export function BlowerPicture({ heat, words }: BlowerPictureProps) {
  const x = linear([0, 1], [1, paper.width - 60]);
  const net = px(x(1 - heat));
  const gross = px(x(1));
  return (
    <Sheet name={words.summary} height={280}>
      <System />
      <Air x={32} y={66} />
      <Coil x={112} />
      <Blower x={204} />
      <Air x={338} y={66} />
      <circle class="mark-return" cx={places.returned} cy={duct.middle} r="6" />
      <rect class="mark-supply" x={places.behindCoil - 9} y={duct.middle - 5} width="10" height="10" />
      <rect class="mark-supply" x={places.behindBlower - 5} y={duct.middle - 5} width="10" height="10" />
      <text class="middle" x={places.returned} y="44">
        {words.returned}
      </text>
      <text class="middle" x={places.behindCoil - 4} y={cabinet.top - 12}>
        {words.behindCoil}
      </text>
      <text class="middle" x={places.behindBlower} y="44">
        {words.behindBlower}
      </text>
      <path class="line-scale" d={`M${places.behindCoil - 4} ${cabinet.top - 7}V${duct.middle - 8}`} />
      <text x="1" y="150">
        {words.gross}
      </text>
      <rect class="outline" x="1" y="157" width={px(gross - 1)} height="20" />
      <path class="line-scale" d={`M${gross} 177V252M${net} 231V252`} />
      <text class="clear" x="1" y="204">
        {words.net}
      </text>
      <rect class="outline" x="1" y="211" width={px(net - 1)} height="20" />
      <path class="line-dimension" d={`M${net} 246H${gross}`} />
      <path class="line-end" d={oblique(net, 246) + oblique(gross, 246)} />
      <text class="end" x={gross} y="272">
        {words.heat}
      </text>
    </Sheet>
  );
}
