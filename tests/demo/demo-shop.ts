import { demoRecords } from '../../src/demo/demo-records';
import { localDay } from '../../src/domain/day/local-day';
import { type DayReview, reviewDay } from '../../src/domain/day/review-day';
import { groupBy } from '../../src/domain/group-by';
import type { LogRecord } from '../../src/domain/records/log-record';
import { SHOP_STREAM } from '../../src/domain/records/log-record';
import { foldShop } from '../../src/domain/shop/fold-shop';
import type { Shop } from '../../src/domain/shop/shop';
import { foldStudy } from '../../src/domain/study/fold-study';
import type { Study } from '../../src/domain/study/study';
import { foldTurn } from '../../src/domain/turn/fold-turn';
import type { Cycle, Turn } from '../../src/domain/turn/turn';

export const records: readonly LogRecord[] = demoRecords();
const streams = groupBy(records, ({ stream }) => stream);

export const shop: Shop = foldShop(streams.get(SHOP_STREAM)!);

function begunWith(kind: LogRecord['fact']['kind']): LogRecord[][] {
  return [...streams.values()].filter(([first]) => first!.fact.kind === kind);
}

/** Two a day, morning first. */
export const turns: readonly Turn[] = begunWith('turn-started').map((records) => foldTurn(records));
export const studies: readonly Study[] = begunWith('study-started').map(foldStudy);

/** Oldest first. */
export const days: readonly DayReview[] = [...groupBy(turns, ({ startedAt }) => localDay(startedAt))]
  .map(([day, own]) => reviewDay(day, own))
  .sort((a, b) => (a.day < b.day ? -1 : 1));

export interface Days {
  /** The first and the last day, from 1. */
  readonly from: number;
  readonly to: number;
}
export const week1: Days = { from: 1, to: 5 };
export const week2: Days = { from: 6, to: 10 };
export const weeks3And4: Days = { from: 11, to: 20 };

export const daysOf = ({ from, to }: Days) => days.slice(from - 1, to);
export const turnsOf = ({ from, to }: Days) => turns.slice(2 * (from - 1), 2 * to);
export const cyclesOf = (span: Days): Cycle[] => turnsOf(span).flatMap(({ cycles }) => [...cycles]);

export const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
export const minutes = (ms: number) => ms / 60_000;
/** Net times in minutes, of one code or of all. */
export const netMinutes = (span: Days, code?: string) =>
  cyclesOf(span)
    .filter(({ partCode }) => code === undefined || partCode === code)
    .map(({ netMs }) => minutes(netMs));
