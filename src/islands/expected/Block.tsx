import { expectedBlock } from '~/words/en/expected.ts';
import { SheetBlock } from '../SheetBlock.tsx';

/** The title block of this sheet. */
export const Block = () => <SheetBlock sheet={expectedBlock.sheet} method={expectedBlock.method} />;
