import type { EnteredLine, EnteredStop } from '../../domain/records/station-fact';
import { offsetMin } from '../../domain/shop/wall-time';
import type { Bench } from '../bench';

const LONGEST_MS = 86_400_000;
const MOST_PARTS = 5_000;

/** A turn as somebody tells it afterwards. */
export interface TurnTold {
  readonly person: string;
  readonly fromWallMs: number;
  readonly toWallMs: number;
  readonly lines: readonly EnteredLine[];
  readonly stops: readonly EnteredStop[];
}

/**
 * Writes down a turn that nobody tapped: its parts count, its time counts, and no time of a single part is known, so
 * it goes into no mean. It is marked with who wrote it down, when and why.
 *
 * @throws {RangeError} enterTurn requires who wrote it down, and why
 * @throws {RangeError} enterTurn requires a turn of at most a day that has ended
 * @throws {RangeError} enterTurn requires whole numbers of parts, at least one in all, and no more reworked and scrapped than done
 * @throws {RangeError} enterTurn requires stoppages that are no longer than the turn
 */
export function enterTurn(bench: Bench, told: TurnTold, { by, why }: { by: string; why: string }): void {
  const { person, fromWallMs, toWallMs, lines, stops } = told;
  const now = bench.clock.now();
  const lastedMs = toWallMs - fromWallMs;
  if (by.trim() === '' || why.trim() === '') {
    throw new RangeError('enterTurn requires who wrote it down, and why');
  }
  if (!(lastedMs > 0 && lastedMs <= LONGEST_MS && toWallMs <= now.wallMs)) {
    throw new RangeError('enterTurn requires a turn of at most a day that has ended');
  }
  const areCounts = ({ done, rework, scrap }: EnteredLine) =>
    [done, rework, scrap].every((count) => Number.isInteger(count) && count >= 0 && count <= MOST_PARTS) &&
    rework + scrap <= done;
  const first = lines.find(({ done }) => done > 0);
  if (!first || !lines.every(areCounts)) {
    throw new RangeError(
      'enterTurn requires whole numbers of parts, at least one in all, and no more reworked and scrapped than done',
    );
  }
  const stoppedMs = stops.reduce((sum, { lostMs }) => sum + lostMs, 0);
  if (!stops.every(({ lostMs }) => lostMs >= 0) || stoppedMs > lastedMs) {
    throw new RangeError('enterTurn requires stoppages that are no longer than the turn');
  }
  const { part, partCode, targetMs } = first;
  bench.begin(
    {
      kind: 'turn-started',
      starts: 'turn',
      person,
      part,
      partCode,
      targetMs,
      enteredLater: { at: now, by: by.trim(), why: why.trim(), lastedMs, lines, stops },
    },
    {
      run: `entered in ${now.run}`,
      monoMs: 0,
      wallMs: fromWallMs,
      zone: now.zone,
      offsetMin: offsetMin(fromWallMs, now.zone),
    },
  );
}
