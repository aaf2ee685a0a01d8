import { lotMakespan } from '../../statistics/lot-makespan';
import { quantile } from '../../statistics/quantile';
import { cellCycle } from './cell-cycle';
import type { CellWork } from './cell-work';
import { randomStreams } from './random-streams';
import { simulateLine } from './simulate-line';

/** When a lot's first and last part are through, milliseconds from its start. */
export interface LotOut {
  readonly firstMs: number;
  readonly lastMs: number;
  /** Nine lots in ten are through by then, simulated from the timed cycles. */
  readonly lateMs: number;
  /** Parts begun and not finished, at most. */
  readonly inside: number;
}

export interface LotComparison {
  /** One person, one operation on the whole lot after another. */
  readonly batch: LotOut;
  /** This cell, one piece at a time. */
  readonly cell: LotOut;
  /** A station for each element, one piece at a time. */
  readonly line: LotOut;
}

/** Lots simulated for the late one. */
const LOTS = 200;

/**
 * One lot three ways: first and last part by formula from the mean times, and a late lot by simulation.
 *
 * Formula: batch and line as in lot-makespan.ts; cell: first Σt, last Σt + (Q − 1)·C
 *   t  mean times of all elements; C  the cell's cycle, with the maximum taken cycle by cycle; Q  parts
 *
 * @throws {RangeError} lotMakespan requires a whole lot from 1
 */
export function compareLots(work: CellWork, lot: number, seed: number): LotComparison {
  const stages = work.elements.map(({ meanMs }) => meanMs);
  const formula = lotMakespan(lot, stages);
  const total = formula.onePieceFirst;
  const { cycleMs, hasMachine } = cellCycle(work);
  const late = lateLots(work, lot, seed);
  return {
    batch: { firstMs: formula.batchFirst, lastMs: formula.batchLast, lateMs: late.batch, inside: lot },
    cell: {
      firstMs: total,
      lastMs: total + (lot - 1) * cycleMs,
      lateMs: late.cell,
      inside: Math.min(lot, hasMachine ? 2 : 1),
    },
    line: {
      firstMs: formula.onePieceFirst,
      lastMs: formula.onePieceLast,
      lateMs: late.line,
      inside: Math.min(lot, stages.length),
    },
  };
}

function lateLots({ elements }: CellWork, lot: number, seed: number): Record<keyof LotComparison, number> {
  const random = randomStreams(seed, 1)[0]!;
  const cycles = elements[0]!.timesMs.length;
  const batch: number[] = [];
  const cell: number[] = [];
  const line: number[] = [];
  const sum = (row: number, belongs: (place: string) => boolean) =>
    elements.reduce((total, { place, timesMs }) => total + (belongs(place) ? timesMs[row]! : 0), 0);
  for (let again = 0; again < LOTS; again += 1) {
    const rows = Array.from({ length: lot }, () => Math.floor(random() * cycles));
    const whole = rows.map((row) => sum(row, () => true));
    batch.push(whole.reduce((total, time) => total + time, 0));
    const own = rows.map((row) => {
      const external = sum(row, (place) => place === 'external');
      const [internal, machine] = ['internal', 'machine'].map((at) => sum(row, (place) => place === at));
      return Math.max(
        external + Math.max(internal!, machine!),
        sum(row, (place) => place === 'other'),
      );
    });
    cell.push(whole[0]! + own.slice(1).reduce((total, time) => total + time, 0));
    let drawn = 0;
    const stations = elements.map(({ timesMs }) => () => {
      const row = rows[Math.floor(drawn / elements.length)]!;
      drawn += 1;
      return timesMs[row]!;
    });
    const buffers = elements.slice(1).map(() => 1);
    line.push(simulateLine({ stations, buffers }, lot).left.at(-1)!);
  }
  return { batch: quantile(batch, 0.9), cell: quantile(cell, 0.9), line: quantile(line, 0.9) };
}
