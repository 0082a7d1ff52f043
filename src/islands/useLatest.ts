import { useRef } from 'preact/hooks';

/** For what is fetched as a hand asks: each call begins a request and gives whether that is still the latest, whichever arrives first. */
export function useLatest(): () => () => boolean {
  const latest = useRef(0);
  return () => {
    const mine = ++latest.current;
    return () => mine === latest.current;
  };
}
