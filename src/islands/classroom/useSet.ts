import { useEffect, useRef, useState } from 'preact/hooks';
import { followUnits } from '../opening.ts';

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
  const asked = useRef(1);
  const go = async (set: number) => {
    asked.current = set;
    try {
      const content = (await make())(set);
      if (asked.current !== set) return;
      setShown({ set, content });
      setFailed(false);
      history.replaceState(null, '', `?set=${set}`);
    } catch {
      setFailed(true);
    }
  };
  useEffect(() => {
    const named = Number(new URLSearchParams(location.search).get('set'));
    if (Number.isInteger(named) && named > 1 && named <= last) void go(named);
    return followUnits();
  }, []);
  return { ...shown, failed, go: (set) => void go(set) };
}
