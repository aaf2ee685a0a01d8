import { localIso } from '../../domain/records/local-iso';
import type { Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { ClockField } from '../clock-field';

const DAY_MS = 86_400_000;

interface Props {
  readonly from: string;
  readonly to: string;
  setFrom(next: string): void;
  setTo(next: string): void;
  readonly isMissing: boolean;
}

/** From when to when, by the clock. */
export function StretchFields({ from, to, setFrom, setTo, isMissing }: Props) {
  return (
    <>
      <div class="settle-span">
        <ClockField label={words.from} value={from} change={setFrom} />
        <ClockField label={words.to} value={to} change={setTo} />
      </div>
      {isMissing && (
        <p class="fault" role="alert">
          {words.missing}
        </p>
      )}
    </>
  );
}

/** Of a turn, milliseconds since it began. */
export interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
}

/** The wall clock at a place in the turn, to the second. */
export function clockAt({ startedAt: { wallMs, offsetMin } }: Turn, atMs: number): string {
  return localIso(wallMs + atMs, offsetMin).slice(11, 19);
}

/**
 * Two times of the clock as a stretch of the turn. Where something in it begins or ends in that second, that is meant:
 * a rest of a stop, less than a second long, would stay a stop.
 */
export function readStretch(turn: Turn, from: string, to: string): Stretch | null {
  const place = (clock: string) => {
    const [, hours, minutes, seconds = '0'] = /^(\d\d):(\d\d)(?::(\d\d))?$/.exec(clock) ?? [];
    if (hours === undefined) return Number.NaN;
    const { wallMs, offsetMin } = turn.startedAt;
    const sinceMidnightMs = (wallMs + offsetMin * 60_000) % DAY_MS;
    const atMs = ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1_000;
    // A turn passes midnight; the second in which it began lies just before it.
    const placeMs = atMs - sinceMidnightMs;
    return placeMs > -1_000 ? placeMs : placeMs + DAY_MS;
  };
  const edges = [0, ...turn.ledger.map((span) => span.toMs), turn.lastAtMs];
  const edge = (clock: string) =>
    edges.find((atMs) => clockAt(turn, atMs) === (clock.length === 5 ? `${clock}:00` : clock)) ??
    place(clock);
  const [fromMs, toMs] = [edge(from), edge(to)];
  return fromMs >= 0 && toMs > fromMs && toMs <= turn.lastAtMs ? { fromMs, toMs } : null;
}
