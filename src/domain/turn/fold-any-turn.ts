import type { LogRecord } from '../records/log-record';
import { enteredTurn } from './entered-turn';
import { foldTurn } from './fold-turn';
import type { Turn } from './turn';

/**
 * A turn from its records, tapped or written down afterwards; see `foldTurn`.
 *
 * @throws {RangeError} foldTurn requires a stream that begins with a turn
 */
export function foldAnyTurn(records: readonly LogRecord[]): Turn {
  return foldTurn(records, enteredTurn);
}
