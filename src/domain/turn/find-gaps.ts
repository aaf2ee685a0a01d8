import type { PlacedRecord } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';

/** Time in which the tablet cannot say what went on. Milliseconds since the turn began. */
export interface Gap {
  /** Key of the record with which the tablet was there again. */
  readonly key: string;
  readonly why: 'slept' | 'page-gone';
  readonly fromMs: number;
  readonly toMs: number;
}

/** Shorter than this the part's clock simply goes on, by the wall clock. */
export const SHORTEST_GAP_MS = 10_000;

/** What moves a turn on, or tells of the clocks. All else may be said from anywhere, at any time. */
const presentKinds = new Set([
  'turn-started',
  'part-begun',
  'element-done',
  'part-done',
  'part-changed',
  'person-changed',
  'stopped',
  'resumed',
  'turn-ended',
  'slept',
  'clock-set',
  'clock-drifted',
  'page-opened',
  'undone',
]);

/**
 * Sleeps of the tablet, and times in which the page was gone, of ten seconds and more. The page was gone since its
 * last mark where the record of its return tells of one, and since the record before otherwise.
 */
export function findGaps(placed: readonly PlacedRecord[]): Gap[] {
  const gaps: Gap[] = [];
  let before: PlacedRecord | null = null;
  for (const each of placed) {
    const { record, atMs } = each;
    // What another tablet said afterwards is no sign that this one was there.
    if (record.device !== placed[0]!.record.device || !presentKinds.has(record.fact.kind)) continue;
    const isNewRun = before !== null && before.record.stamp.run !== record.stamp.run;
    const sleptMs = record.fact.kind === 'slept' ? record.fact.sleptMs : 0;
    const goneMs = record.fact.kind === 'page-opened' ? record.fact.goneMs : undefined;
    const fromMs = isNewRun ? Math.max(before!.atMs, atMs - (goneMs ?? atMs)) : atMs - sleptMs;
    if (atMs - fromMs >= SHORTEST_GAP_MS) {
      gaps.push({ key: recordKey(record), why: isNewRun ? 'page-gone' : 'slept', fromMs, toMs: atMs });
    }
    before = each;
  }
  return gaps;
}
