import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import { readStudyRecords } from '../../application/study/read-study-records';
import type { LogRecord } from '../../domain/records/log-record';
import { recordKey } from '../../domain/records/record-key';
import { foldStudy } from '../../domain/study/fold-study';
import type { Study } from '../../domain/study/study';
import { useApp } from '../app';

export interface StudyInView {
  /** The study, or why there is none to show. */
  readonly study: Study | 'opening' | 'unknown' | 'unread';
  /** Shows what was just decided about it, before the log has answered. */
  readonly take: (records: readonly LogRecord[]) => void;
}

/** A study to read and to correct. What is recorded of it is on screen at once, saved or not. */
export function useStudyInView(id: string): StudyInView {
  const { bench } = useApp();
  const inHand = bench.study.value?.id === id ? bench.study.value : null;
  const [records, setRecords] = useState<readonly LogRecord[] | 'opening' | 'unread'>('opening');
  const isInHand = inHand !== null;

  useEffect(() => {
    if (isInHand) return;
    let isCurrent = true;
    readStudyRecords(bench, id).then(
      (found) => isCurrent && setRecords(found),
      () => isCurrent && setRecords('unread'),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, id, isInHand]);

  const take = useCallback((added: readonly LogRecord[]) => {
    setRecords((known) => (typeof known === 'string' ? known : union(known, added)));
  }, []);
  const study = useMemo(() => {
    if (typeof records === 'string') return records;
    return records.length > 0 ? foldStudy(records) : 'unknown';
  }, [records]);
  return { study: inHand ?? study, take };
}

function union(known: readonly LogRecord[], added: readonly LogRecord[]): LogRecord[] {
  const keys = new Set(known.map(recordKey));
  return [...known, ...added.filter((record) => !keys.has(recordKey(record)))];
}
