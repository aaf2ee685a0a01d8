import type { LedgerSpan, Turn } from './turn';

/**
 * What of a turn belongs to one person alone: parts that nobody else had a hand in, and the time that was theirs.
 * A part that two people shared is in neither's own figures.
 */
export function ownOfTurn(
  { cycles, ledger, people, person: inHand }: Turn,
  person: string = inHand,
): Pick<Turn, 'cycles' | 'ledger'> {
  if (people.length === 1) return { cycles, ledger };
  const spans = people.filter((span) => span.person === person);
  return {
    cycles: cycles.filter((cycle) => cycle.person === person && !cycle.isShared),
    ledger: ledger.flatMap((span): LedgerSpan[] =>
      spans.flatMap((own) => {
        const fromMs = Math.max(span.fromMs, own.fromMs);
        const toMs = Math.min(span.toMs, own.toMs);
        return fromMs < toMs ? [{ ...span, fromMs, toMs }] : [];
      }),
    ),
  };
}
