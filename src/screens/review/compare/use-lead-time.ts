import { useEffect, useState } from 'preact/hooks';
import { readLeadTime } from '../../../application/review/read-lead-time';
import type { LeadTimes } from '../../../domain/cell/lead-times';
import { useApp } from '../../app';

/** Lead times of a period; undefined while they are read, null where no lot left. */
export function useLeadTime(from: string, to: string): LeadTimes | null | undefined {
  const { bench } = useApp();
  const [found, setFound] = useState<LeadTimes | null>();
  useEffect(() => {
    let isCurrent = true;
    setFound(undefined);
    readLeadTime(bench, { from, to }).then(
      (times) => isCurrent && setFound(times),
      () => isCurrent && setFound(null),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, from, to]);
  return found;
}
