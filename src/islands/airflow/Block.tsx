import { airflowMargin } from '~/words/en/airflowContext.ts';
import { airflowSheet } from '~/words/en/airflowSheet.ts';
import { SheetBlock } from '../SheetBlock.tsx';
import { used, wayName } from './model.ts';

/** The title block of this sheet. */
export function Block() {
  return <SheetBlock sheet={airflowSheet.title} method={used.value ? wayName(used.value) : airflowMargin.open} />;
}
