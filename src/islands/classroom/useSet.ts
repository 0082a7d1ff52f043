import { useEffect, useState } from 'preact/hooks';
import { followUnits } from '../opening.ts';
import { useLatest } from '../useLatest.ts';

export interface SetOf<Content> {
  readonly set: number;
  readonly content: Content;
  /** The part that makes sets could not be fetched. */
  readonly failed: boolean;
  readonly go: (set: number) => void;
}

/**
 * The set that a page shows: the first stands in the page; any other, from the address or asked for, is made by a part that
 * is fetched then. The address follows what is asked for.
 */
export function useSet<Content>(
  first: Content,
  make: () => Promise<(set: number) => Content>,
  last: number,
): SetOf<Content> {
  const [shown, setShown] = useState({ set: 1, content: first });
  const [failed, setFailed] = useState(false);
  // Of two numbers typed one after the other the later counts, whichever arrives first.
  const begin = useLatest();
  const go = async (set: number) => {
    const isLatest = begin();
    try {
      const content = (await make())(set);
      if (!isLatest()) return;
      setShown({ set, content });
      setFailed(false);
      history.replaceState(null, '', `?set=${set}`);
    } catch {
      if (isLatest()) setFailed(true);
    }
  };
  useEffect(() => {
    const asked = Number(new URLSearchParams(location.search).get('set'));
    if (Number.isInteger(asked) && asked > 1 && asked <= last) void go(asked);
    return followUnits();
  }, []);
  return { ...shown, failed, go: (set) => void go(set) };
}
