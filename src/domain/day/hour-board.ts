import { NOT_STATED } from '../turn/turn';
import type { AttendedSpan } from './attended-spans';
import type { AttendedTurn } from './summarise-day';

/** One hour of the production analysis board, in earned time. Milliseconds. */
export interface BoardHour {
  readonly fromWallMs: number;
  /** Minutes to add to UTC for the shop's own clock. */
  readonly offsetMin: number;
  readonly plannedMs: number;
  readonly earnedMs: number;
  /** Since the first hour. */
  readonly plannedSoFarMs: number;
  readonly earnedSoFarMs: number;
  /** Good at last, of those that ended in it. */
  readonly goodParts: number;
  /** Nothing ended in it: work that goes in lots says nothing by the hour. */
  readonly isSilent: boolean;
  /** What lost most of it; null when nothing did. */
  readonly cause: { readonly reason: string; readonly label: string; readonly lostMs: number } | null;
}

const HOUR_MS = 3_600_000;
const MINUTE_MS = 60_000;

/**
 * The day hour by hour: earned minutes against the minutes planned, so that an hour of large parts does not read
 * as a slow one.
 *
 * Formula: planned = working time of the hour × attended ÷ working time of the day
 *   working time  attended time outside the breaks of the shift
 *   earned        Σ target of the parts good at last that ended in the hour, and set-ups × their standard
 * Targets hold an allowance for rest; working time alone has none. So the plan is stretched to the attended time
 * and adds up to it: a day that earns all of its plan has an efficiency of 1.
 */
export function hourBoard(turns: readonly AttendedTurn[], setUpStandardMs: number | null): BoardHour[] {
  const hours = new Map<number, Hour>();
  const at = (wallMs: number, offsetMin: number) => hourAt(hours, wallMs, offsetMin);
  let attendedMs = 0;
  let workingMs = 0;
  for (const { turn, spans } of turns) {
    const { wallMs, offsetMin } = turn.startedAt;
    for (const span of spans) {
      attendedMs += span.toMs - span.fromMs;
      for (const [fromMs, toMs] of byTheHour(span, wallMs, offsetMin)) {
        const hour = at(wallMs + toMs, offsetMin);
        if (span.isWorking) {
          hour.workingMs += toMs - fromMs;
          workingMs += toMs - fromMs;
        }
        if (span.category === 'stoppage' || span.category === 'called-away') lose(hour, span, toMs - fromMs);
      }
    }
    for (const [place, { category, toMs }] of spans.entries()) {
      const isLast = spans[place + 1]?.category !== 'set-up';
      if (category === 'set-up' && isLast) at(wallMs + toMs, offsetMin).earnedMs += setUpStandardMs ?? 0;
    }
    for (const { outcome, targetMs, toMs } of turn.cycles) {
      const hour = at(wallMs + toMs, offsetMin);
      hour.done += 1;
      if (outcome === 'scrap') continue;
      hour.good += 1;
      hour.earnedMs += targetMs ?? 0;
    }
  }
  let plannedSoFarMs = 0;
  let earnedSoFarMs = 0;
  return [...hours.values()]
    .sort((a, b) => a.fromWallMs - b.fromWallMs)
    .map((hour) => {
      const plannedMs = workingMs > 0 ? (hour.workingMs * attendedMs) / workingMs : 0;
      plannedSoFarMs += plannedMs;
      earnedSoFarMs += hour.earnedMs;
      const { fromWallMs, offsetMin, earnedMs, good, done } = hour;
      return {
        fromWallMs,
        offsetMin,
        plannedMs,
        earnedMs,
        plannedSoFarMs,
        earnedSoFarMs,
        goodParts: good,
        isSilent: done === 0,
        cause: greatestLoss(hour),
      };
    });
}

interface Hour {
  readonly fromWallMs: number;
  readonly offsetMin: number;
  workingMs: number;
  earnedMs: number;
  good: number;
  done: number;
  readonly lost: Map<string, { readonly label: string; lostMs: number }>;
}

function hourAt(hours: Map<number, Hour>, wallMs: number, offsetMin: number): Hour {
  // What ends on the stroke belongs to the hour before it.
  const fromWallMs = hourStart(wallMs - 1, offsetMin);
  const known = hours.get(fromWallMs);
  if (known) return known;
  const made = { fromWallMs, offsetMin, workingMs: 0, earnedMs: 0, good: 0, done: 0, lost: new Map() };
  hours.set(fromWallMs, made);
  return made;
}

/** Zones an hour and a half away have full hours of their own. */
function hourStart(wallMs: number, offsetMin: number): number {
  const shiftMs = offsetMin * MINUTE_MS;
  return Math.floor((wallMs + shiftMs) / HOUR_MS) * HOUR_MS - shiftMs;
}

/** Pieces of a span, each within one hour of the clock. */
function byTheHour({ fromMs, toMs }: AttendedSpan, wallMs: number, offsetMin: number): [number, number][] {
  const pieces: [number, number][] = [];
  for (let beganMs = fromMs; beganMs < toMs; ) {
    const nextMs = hourStart(wallMs + beganMs, offsetMin) + HOUR_MS - wallMs;
    const endMs = Math.min(toMs, nextMs);
    pieces.push([beganMs, endMs]);
    beganMs = endMs;
  }
  return pieces;
}

function lose({ lost }: Hour, { reason, label }: AttendedSpan, ms: number): void {
  const before = lost.get(reason);
  lost.set(reason, { label: label || (before?.label ?? ''), lostMs: (before?.lostMs ?? 0) + ms });
}

/** A reason that somebody gave goes before one that nobody did. */
function greatestLoss({ lost }: Hour): BoardHour['cause'] {
  const [first] = [...lost]
    .map(([reason, of]) => ({ reason, ...of }))
    .sort((a, b) => Number(a.reason === NOT_STATED) - Number(b.reason === NOT_STATED) || b.lostMs - a.lostMs);
  return first ?? null;
}
