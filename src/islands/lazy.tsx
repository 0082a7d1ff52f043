import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { whenUntouched } from './untouched.ts';

/** A component that is fetched when it is first drawn, and draws nothing until it is there. */
export function lazy<Props extends object = object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  let fetched: ComponentType<Props> | undefined;
  return function Late(props: Props) {
    const [ready, setReady] = useState<{ readonly part: ComponentType<Props> } | undefined>(
      fetched && { part: fetched },
    );
    useEffect(() => {
      if (ready) return;
      let here = true;
      void load().then((part) => {
        fetched = part;
        whenUntouched(() => here && setReady({ part }));
      });
      return () => {
        here = false;
      };
    }, [ready]);
    return ready ? <ready.part {...props} /> : null;
  };
}
