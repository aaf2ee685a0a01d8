import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { MissingPart } from './missing-part';

/**
 * A component that is read when it is wanted, and null until then: nothing that the first tap of the day should
 * wait for. Where it cannot be read that is said in its place.
 */
export function useLazy<Props>(
  isWanted: boolean,
  load: () => Promise<FunctionComponent<Props>>,
): FunctionComponent<Props> | null {
  const [loaded, setLoaded] = useState<{ View: FunctionComponent<Props> } | null>(null);
  useEffect(() => {
    if (!isWanted) return;
    load().then(
      (View) => setLoaded({ View }),
      () => setLoaded({ View: MissingPart }),
    );
  }, [isWanted, load]);
  return loaded?.View ?? null;
}
