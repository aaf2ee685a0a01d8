import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';
import { writtenText } from './written-text';

/**
 * Writes a note on a day. With `isChange` the work itself was changed: limits begin anew on it.
 *
 * @throws {RangeError} noteDay requires a text
 */
export function noteDay(
  bench: Bench,
  { day, text, isChange, by }: { day: string; text: string; isChange: boolean; by: string },
): void {
  const written = writtenText('noteDay', 'a text', text);
  bench.record(SHOP_STREAM, [{ kind: 'day-noted', day, text: written, isChange, by: by.trim() }]);
}
