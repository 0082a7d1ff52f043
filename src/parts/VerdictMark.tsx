/** Where the bar begins, how wide it is, and where the line stands, of 84. */
const drawn = {
  meets: { bar: 21, width: 62, line: 2 },
  cannotTell: { bar: 0.5, width: 82.5, line: 30 },
  short: { bar: 0.5, width: 62, line: 82 },
} as const;

/** A verdict as a mark: the line, and the hatched bar of the range right of it, across it, or left of it. Always with the word. */
export function VerdictMark({ of }: { of: keyof typeof drawn }) {
  const { bar, width, line } = drawn[of];
  return (
    <svg class="drawing verdict-mark" viewBox="0 0 84 56" width="84" height="56" aria-hidden="true">
      <rect x={bar} y="14" width={width} height="28" fill="url(#hatch-measured)" />
      <path class="line-knock" d={`M${line} 14v28`} />
      <rect class="outline" x={bar} y="14" width={width} height="28" />
      <path class="line-mark" d={`M${line} 0v4.5m0 4.5V47m0 4.5V56`} />
    </svg>
  );
}
