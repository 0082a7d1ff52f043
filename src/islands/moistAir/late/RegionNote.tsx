import { regionText } from '../../regionText.ts';

/** What the hatched regions on the chart are. */
export function RegionNote() {
  const text = regionText();
  return text && <p class="note">{text}</p>;
}
