import type { PlacedRecord } from '../records/place-on-timeline';
import { layOver } from './lay-over';

/** Whose a stretch of a turn is. Milliseconds since the turn began; the last span has no end. */
export interface PersonSpan {
  readonly person: string;
  readonly fromMs: number;
  readonly toMs: number;
}

/**
 * Who was at the station all through a turn, gapless and in order: whoever began it, whoever took over by a tap,
 * and as somebody corrected it for the whole turn or for a stretch. What was said last holds.
 *
 * @param valid records of the turn without those taken back
 */
export function peopleLine(beganBy: string, valid: readonly PlacedRecord[]): PersonSpan[] {
  let line: PersonSpan[] = [{ person: beganBy, fromMs: 0, toMs: Number.POSITIVE_INFINITY }];
  let endMs = Number.POSITIVE_INFINITY;
  for (const { record, atMs } of valid) {
    const { fact } = record;
    if (fact.kind === 'turn-started' && fact.enteredLater) endMs = fact.enteredLater.lastedMs;
    else if (fact.kind === 'turn-ended') endMs = Math.min(endMs, atMs);
    else if (fact.kind === 'person-corrected') {
      const { person, fromMs = 0, toMs = Number.POSITIVE_INFINITY } = fact;
      line = layOver(line, { person, fromMs, toMs });
    } else if (fact.kind === 'person-changed' && atMs < endMs) {
      line = layOver(line, { person: fact.person, fromMs: atMs, toMs: Number.POSITIVE_INFINITY });
    }
  }
  // Nobody is there after the end: whoever had the last stretch has all that follows, and no other name comes after it.
  const there = line.filter(({ fromMs }) => fromMs === 0 || fromMs < endMs);
  there.push({ ...there.pop()!, toMs: Number.POSITIVE_INFINITY });
  return there.reduce<PersonSpan[]>(joined, []);
}

/** Whose a stretch is, by its end, and whether more than one person had a hand in it. */
export function whose(
  line: readonly PersonSpan[],
  { fromMs, toMs }: { readonly fromMs: number; readonly toMs: number },
): { person: string; isShared: boolean } {
  const inside = line.filter((span) => span.fromMs < toMs && span.toMs > fromMs);
  const last = inside.at(-1) ?? line.find((span) => span.toMs > fromMs)!;
  return { person: last.person, isShared: inside.some(({ person }) => person !== last.person) };
}

function joined(line: PersonSpan[], span: PersonSpan): PersonSpan[] {
  const before = line.at(-1);
  if (before?.person !== span.person) return [...line, span];
  return [...line.slice(0, -1), { ...before, toMs: span.toMs }];
}
