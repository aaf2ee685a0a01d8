import { useEffect, useState } from 'preact/hooks';
import type { StudyInList } from '../../application/study/list-studies';
import { readStudyFigures, type StudyFigures } from '../../application/study/read-study-figures';
import { useApp } from '../app';

/** Figures of the studies listed, read one after the other so that the list itself never waits for them. */
export function useStudyFigures(studies: readonly StudyInList[]): ReadonlyMap<string, StudyFigures> {
  const { bench } = useApp();
  const [figures, setFigures] = useState<ReadonlyMap<string, StudyFigures>>(new Map());
  useEffect(() => {
    let isCurrent = true;
    const readAll = async () => {
      for (const { id } of studies) {
        const found = await readStudyFigures(bench, id).catch(() => null);
        if (!isCurrent) return;
        if (found) setFigures((known) => new Map(known).set(id, found));
      }
    };
    readAll();
    return () => {
      isCurrent = false;
    };
  }, [bench, studies]);
  return figures;
}
