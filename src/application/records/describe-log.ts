import { localDay } from '../../domain/day/local-day';
import type { Bench } from '../bench';

/** What the tablet holds, in a few numbers. */
export interface LogDescription {
  readonly device: string;
  readonly records: number;
  readonly turns: number;
  readonly studies: number;
  /** Local days of the first and the last turn or study, as 2026-03-02; null when there is none. */
  readonly days: { readonly first: string; readonly last: string } | null;
}

/** Counts what is saved. What is on its way to the log is not counted: it is not saved yet. */
export async function describeLog(bench: Bench): Promise<LogDescription> {
  const { log } = bench;
  const [records, turns, studies] = await Promise.all([
    log.count(),
    log.readStarts('turn'),
    log.readStarts('study'),
  ]);
  const days = [...turns, ...studies].map(({ stamp }) => localDay(stamp)).sort();
  const [first, last] = [days[0], days.at(-1)];
  return {
    device: log.device,
    records,
    turns: turns.length,
    studies: studies.length,
    days: first && last ? { first, last } : null,
  };
}
