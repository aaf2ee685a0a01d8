import { useEffect, useState } from 'preact/hooks';
import { readCopyAge } from '../../application/backup/read-copy-age';
import type { CopyAge } from '../../domain/records/copy-age';
import { useApp } from '../app';

/** How old the last copy outside is, read again whenever something is saved; null until it was read. */
export function useCopyAge(): CopyAge | null {
  const { bench } = useApp();
  const [age, setAge] = useState<CopyAge | null>(null);
  const { state } = bench.saving.value;
  const changes = bench.changes.value;
  useEffect(() => {
    let isCurrent = true;
    readCopyAge(bench).then(
      (found) => isCurrent && setAge(found),
      // The sheet beside it says that the log cannot be read.
      () => isCurrent && setAge(null),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, state, changes]);
  return age;
}
