import type { Turn } from '../../domain/turn/turn';
import type { Bench } from '../bench';

/**
 * Takes a turn away again that was written down afterwards. It stays in the log, with who wrote it down and who took it
 * away; one that was tapped happened, and cannot be taken away.
 *
 * @throws {RangeError} withdrawTurn requires a turn that was written down afterwards
 */
export function withdrawTurn(
  bench: Bench,
  { id, enteredLater }: Pick<Turn, 'id' | 'enteredLater'>,
  { by, why }: { by: string; why: string },
): void {
  if (!enteredLater) throw new RangeError('withdrawTurn requires a turn that was written down afterwards');
  bench.record(id, [{ kind: 'turn-withdrawn', by, why }]);
}
