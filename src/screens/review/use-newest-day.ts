import { useEffect, useState } from 'preact/hooks';
import { readNewestDay } from '../../application/review/read-newest-day';
import { useApp } from '../app';
import { useLogChanges } from '../use-log-changes';

/** The newest day with a turn, null when there is none, undefined while it is read. */
export function useNewestDay(): string | null | undefined {
  const { bench } = useApp();
  const [newest, setNewest] = useState<string | null>();
  const changes = useLogChanges();
  useEffect(() => {
    let isCurrent = true;
    readNewestDay(bench).then(
      (day) => isCurrent && setNewest(day),
      // What cannot be read is told by the days themselves.
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, changes]);
  return newest;
}
