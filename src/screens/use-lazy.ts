import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * A component that is read when it is wanted, and null until then: nothing that the first tap of the day should
 * wait for.
 */
export function useLazy<Props>(
  isWanted: boolean,
  load: () => Promise<FunctionComponent<Props>>,
): FunctionComponent<Props> | null {
  const [loaded, setLoaded] = useState<{ View: FunctionComponent<Props> } | null>(null);
  useEffect(() => {
    if (isWanted) load().then((View) => setLoaded({ View }));
  }, [isWanted, load]);
  return loaded?.View ?? null;
}
