import { useEffect, useState } from 'preact/hooks';
import { readLeadTime } from '../../../application/review/read-lead-time';
import type { LeadTimes } from '../../../domain/cell/lead-times';
import { useApp } from '../../app';

/** Lead times of a period; null while they are read, and where no lot left. */
export function useLeadTime(from: string, to: string): LeadTimes | null {
  const { bench } = useApp();
  const [found, setFound] = useState<LeadTimes | null>(null);
  useEffect(() => {
    let isCurrent = true;
    setFound(null);
    readLeadTime(bench, { from, to }).then(
      (times) => isCurrent && setFound(times),
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, from, to]);
  return found;
}
