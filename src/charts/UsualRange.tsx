import { linear, oblique, px } from './scale.ts';

/** Where a figure stands against what is usual: a dimension line for the usual, a thick mark for the figure. */
export function UsualRange({ value, usual }: { value: number; usual: readonly [number, number] }) {
  const x = linear(usual, [18, 86]);
  const at = px(Math.min(101, Math.max(3, x(value))));
  return (
    <svg class="drawing hang-picture" width="104" height="24" viewBox="0 0 104 24" aria-hidden="true">
      <path class="line-dimension" d="M18 12H86" />
      <path class="line-end" d={oblique(18, 12, 3.5) + oblique(86, 12, 3.5)} />
      <path class="line-measured" d={`M${at} 2V22`} />
    </svg>
  );
}
