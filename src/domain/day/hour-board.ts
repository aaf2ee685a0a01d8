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
  /** Of it, by set-ups. */
  readonly setUpMs: number;
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
 * Formula: planned = attended time of the hour, meal breaks out, rest breaks in
 *   earned   Σ target of the parts good at last that ended in the hour, and set-ups × their standard
 * Targets hold an allowance for rest, so a rest is planned with them and not taken off again. The plan adds up to the
 * attended time, no hour has more than its 60 minutes, and a day that earns all of its plan has an efficiency of 1.
 */
export function hourBoard(turns: readonly AttendedTurn[], setUpStandardMs: number | null): BoardHour[] {
  const hours = new Map<number, Hour>();
  const at = (wallMs: number, offsetMin: number) => hourAt(hours, wallMs, offsetMin);
  for (const { turn, spans } of turns) {
    const { wallMs, offsetMin } = turn.startedAt;
    for (const span of spans) {
      for (const [fromMs, toMs] of byTheHour(span, wallMs, offsetMin)) {
        const hour = at(wallMs + toMs, offsetMin);
        hour.plannedMs += toMs - fromMs;
        if (span.category === 'stoppage' || span.category === 'called-away') lose(hour, span, toMs - fromMs);
      }
    }
    for (const [place, { category, toMs }] of spans.entries()) {
      const isLast = spans[place + 1]?.category !== 'set-up';
      if (category !== 'set-up' || !isLast) continue;
      const hour = at(wallMs + toMs, offsetMin);
      hour.earnedMs += setUpStandardMs ?? 0;
      hour.setUpMs += setUpStandardMs ?? 0;
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
      plannedSoFarMs += hour.plannedMs;
      earnedSoFarMs += hour.earnedMs;
      const { fromWallMs, offsetMin, plannedMs, earnedMs, setUpMs, good, done } = hour;
      return {
        fromWallMs,
        offsetMin,
        plannedMs,
        earnedMs,
        setUpMs,
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
  plannedMs: number;
  earnedMs: number;
  setUpMs: number;
  good: number;
  done: number;
  readonly lost: Map<string, { readonly label: string; lostMs: number }>;
}

function hourAt(hours: Map<number, Hour>, wallMs: number, offsetMin: number): Hour {
  // What ends on the stroke belongs to the hour before it.
  const fromWallMs = hourStart(wallMs - 1, offsetMin);
  const known = hours.get(fromWallMs);
  if (known) return known;
  const made = {
    fromWallMs,
    offsetMin,
    plannedMs: 0,
    earnedMs: 0,
    setUpMs: 0,
    good: 0,
    done: 0,
    lost: new Map(),
  };
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
