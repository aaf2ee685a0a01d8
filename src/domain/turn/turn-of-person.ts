import { ownOfTurn } from './own-of-turn';
import type { Stoppage, Turn } from './turn';

/**
 * A turn that people shared, as the record of one of them: the parts that were theirs alone, and by who was there the
 * ledger and the stoppages, of which each has the stretch that lay in their own time. A turn of one person is itself.
 */
export function turnOfPerson(turn: Turn, person: string): Turn {
  if (turn.people.length === 1) return turn;
  const spans = turn.people.filter((span) => span.person === person);
  const stoppages = turn.stoppages.flatMap((stoppage): Stoppage[] =>
    spans.flatMap((own) => {
      const fromMs = Math.max(stoppage.fromMs, own.fromMs);
      const toMs = Math.min(stoppage.toMs ?? turn.lastAtMs, own.toMs);
      return fromMs < toMs ? [{ ...stoppage, fromMs, toMs }] : [];
    }),
  );
  return { ...turn, ...ownOfTurn(turn, person), person, stoppages };
}
