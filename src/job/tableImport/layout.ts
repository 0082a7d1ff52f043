import { blocksIn } from './blocks.ts';
import { tidyIn } from './tidy.ts';
import type { Layout, Sheet } from './types.ts';

/** Which cells of a sheet belong together, and what they are likely to be; `null` where nothing in it looks like figures. */
export function layoutOf(sheet: Sheet): Layout | null {
  return blocksIn(sheet) ?? tidyIn(sheet);
}
