import { px } from './scale.ts';

export interface CoolingDryingProps {
  /** Share of the work that cools (sensible), a fraction. */
  readonly sensibleHeatRatio: number;
  readonly cooling: string;
  readonly drying: string;
  readonly summary: string;
  readonly width: number;
}

/** One bar from end to end: cooling blank, drying dotted. */
export function CoolingDrying({ sensibleHeatRatio, cooling, drying, summary, width }: CoolingDryingProps) {
  const share = Math.min(1, Math.max(0, sensibleHeatRatio));
  const edge = px(width * share);
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} 76`} role="img" aria-label={summary}>
      <rect class="outline blank" x="0.5" y="24" width={edge} height="28" />
      {edge < width - 1 && (
        <rect x={edge} y="24" width={px(width - edge - 0.5)} height="28" fill="url(#hatch-drying)" />
      )}
      <rect class="outline" x={edge} y="24" width={px(Math.max(0, width - edge - 0.5))} height="28" />
      <text x="0" y="15">
        {cooling}
      </text>
      <text class="end" x={width} y="71">
        {drying}
      </text>
    </svg>
  );
}
