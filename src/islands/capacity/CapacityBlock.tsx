import { titleBlock } from '~/words/en/results.ts';
import { SheetBlock } from '../SheetBlock.tsx';

/** The title block of this sheet. */
export const CapacityBlock = () => <SheetBlock sheet={titleBlock.sheetName} method={titleBlock.methodName} />;
