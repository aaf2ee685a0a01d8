import { useEffect, useState } from 'preact/hooks';

/** True while the tablet stands upright. */
export function usePortrait(): boolean {
  const [query] = useState(() => matchMedia('(orientation: portrait)'));
  const [isPortrait, setIsPortrait] = useState(query.matches);
  useEffect(() => {
    const follow = () => setIsPortrait(query.matches);
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, [query]);
  return isPortrait;
}
