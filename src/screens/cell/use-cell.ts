import { useEffect, useState } from 'preact/hooks';
import { readCellSettings } from '../../application/cell/cell-settings';
import { type CellHistory, readCellDays } from '../../application/cell/read-cell-days';
import { type CellStudies, readCellStudies } from '../../application/cell/read-cell-studies';
import type { CellSettings } from '../../domain/records/shop-fact';
import { useApp } from '../app';
import { useLogChanges } from '../use-log-changes';

export interface CellData extends CellStudies {
  readonly history: CellHistory;
  readonly settings: CellSettings;
}

export type CellFound =
  | { readonly state: 'reading' }
  | { readonly state: 'trouble'; readonly problem: string; readonly readAgain: () => void }
  | { readonly state: 'read'; readonly cell: CellData };

/** The studies, days, lots and settings of the cell, read again whenever something is recorded. */
export function useCell(): CellFound {
  const { bench } = useApp();
  const [attempt, setAttempt] = useState(0);
  const [found, setFound] = useState<CellFound>({ state: 'reading' });
  const changes = useLogChanges();
  useEffect(() => {
    let isCurrent = true;
    const readAgain = () => setAttempt(attempt + 1);
    const readAll = async (): Promise<CellData> => {
      const [studies, settings] = await Promise.all([readCellStudies(bench), readCellSettings(bench)]);
      return { ...studies, settings, history: await readCellDays(bench, settings.machineReasons) };
    };
    readAll().then(
      (cell) => {
        if (isCurrent) setFound({ state: 'read', cell });
      },
      (error) => {
        if (isCurrent) setFound({ state: 'trouble', problem: String(error), readAgain });
      },
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, changes, attempt]);
  return found;
}
