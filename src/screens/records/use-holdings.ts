import { useEffect, useState } from 'preact/hooks';
import { describeLog, type LogDescription } from '../../application/records/describe-log';
import { useApp } from '../app';

/** What the log holds, counted again whenever something new is saved. */
export function useHoldings(): { holdings: LogDescription | null; problem: string } {
  const { bench } = useApp();
  const [found, setFound] = useState<{ holdings: LogDescription | null; problem: string }>({
    holdings: null,
    problem: '',
  });
  const { state, unsaved } = bench.saving.value;
  const changes = bench.changes.value;

  useEffect(() => {
    let isCurrent = true;
    describeLog(bench).then(
      (holdings) => isCurrent && setFound({ holdings, problem: '' }),
      (error) => isCurrent && setFound((before) => ({ ...before, problem: String(error) })),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, state, unsaved, changes]);
  return found;
}
