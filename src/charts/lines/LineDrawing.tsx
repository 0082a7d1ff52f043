import { oblique, px } from '../scale.ts';

export interface LineDrawingProps {
  /** How far the indoor coil stands above the outdoor unit, over the length of the lines: −1 to 1. */
  readonly lift: number;
  readonly width: number;
  readonly words: {
    readonly outdoor: string;
    readonly indoor: string;
    readonly vapor: string;
    readonly liquid: string;
    readonly length: string;
    /** '' for units on one level. */
    readonly height: string;
    readonly summary: string;
  };
}

const height = 252;
const box = 64;
const middle = 110;
/** How far up or down the drawing goes for a lift as long as the lines, and at least for any lift. */
const reach = { most: 108, least: 20 } as const;
/** Where the tubes leave a unit, below its top. */
const ports = { vapor: 20, liquid: 44 } as const;

/** The outdoor unit, the indoor coil and the two tubes between them, the coil as far up or down as it stands. */
export function LineDrawing({ lift, width, words }: LineDrawingProps) {
  const share = Math.max(-1, Math.min(1, lift));
  const rise = Math.sign(share) * Math.max(reach.least, Math.abs(share) * reach.most);
  const [outTop, inTop] = [middle + rise / 2 - box / 2, middle - rise / 2 - box / 2];
  const [outRight, inLeft] = [8 + box, width - 8 - box];
  const turn = outRight + (inLeft - outRight) * 0.66;
  const tube = (port: number) => {
    // The upper tube turns first where the lines climb and last where they fall: so they never cross.
    const bend = turn + (Math.sign(rise) * (port - ports.vapor)) / 2;
    return `M${outRight} ${px(outTop + port)}H${px(bend)}V${px(inTop + port)}H${inLeft}`;
  };
  const [vapor, liquid] = [tube(ports.vapor), tube(ports.liquid)];
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.summary}>
      <path class="tube" d={vapor} />
      <path class="tube-bore" d={vapor} />
      <path class="tube-thin" d={liquid} />
      <path class="tube-thin-bore" d={liquid} />
      <Flow x={outRight + 10} y={outTop + ports.vapor - 17} words={words.vapor} left />
      <Flow x={outRight + 10} y={outTop + ports.liquid + 17} words={words.liquid} />
      <Unit x={8} y={outTop} name={words.outdoor} />
      <circle class="outline" cx={8 + box / 2} cy={px(outTop + box / 2)} r="20" />
      <path
        class="line-scale"
        d={`M${8 + box / 2} ${px(outTop + 12)}v40M${8 + box / 2 - 20} ${px(outTop + box / 2)}h40`}
      />
      <Unit x={inLeft} y={inTop} name={words.indoor} end />
      <path class="line-scale" d={`M${inLeft + 10} ${px(inTop + 54)}l22 -44l22 44`} />
      <LengthLine from={outRight} to={inLeft} words={words.length} />
      {words.height !== '' && <HeightLine x={inLeft - 20} from={outTop} to={inTop} words={words.height} />}
    </svg>
  );
}

/** What flows in a tube, and which way. */
function Flow({ x, y, words, left = false }: { x: number; y: number; words: string; left?: boolean }) {
  return (
    <g>
      <path class="arrow" d={left ? `M${x} ${px(y)}l12 -5v10z` : `M${x + 12} ${px(y)}l-12 -5v10z`} />
      <text x={x + 18} y={px(y + 5)}>
        {words}
      </text>
    </g>
  );
}

function Unit({ x, y, name, end = false }: { x: number; y: number; name: string; end?: boolean }) {
  return (
    <g>
      <rect class="outline blank" x={x} y={px(y)} width={box} height={box} />
      <text class={end ? 'end clear' : 'clear'} x={end ? x + box : x} y={px(y + box + 18)}>
        {name}
      </text>
    </g>
  );
}

/** The length of the lines, as they lie. */
function LengthLine({ from, to, words }: { from: number; to: number; words: string }) {
  const y = height - 10;
  return (
    <g>
      <path class="line-dimension" d={`M${from} ${y}H${to}`} />
      <path class="line-end" d={oblique(from, y) + oblique(to, y)} />
      <text class="strong middle clear" x={px((from + to) / 2)} y={y - 8}>
        {words}
      </text>
    </g>
  );
}

/** Beside the coil, clear of the tubes: from foot to foot where it stands higher, from top to top where it stands lower. */
function HeightLine({ x, from, to, words }: { x: number; from: number; to: number; words: string }) {
  const edge = to < from ? box : 0;
  const [low, high] = [Math.max(from, to) + edge, Math.min(from, to) + edge];
  return (
    <g>
      <path class="line-scale" d={`M${x - 10} ${px(low)}h20M${x - 10} ${px(high)}h20`} />
      <path class="line-dimension" d={`M${x} ${px(low)}V${px(high)}`} />
      <path class="line-end" d={oblique(x, low) + oblique(x, high)} />
      <text class="strong end" x={x - 12} y={px((low + high) / 2 + 5)}>
        {words}
      </text>
    </g>
  );
}
