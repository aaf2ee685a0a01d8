import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';
import type { Secrets } from '../ports/secrets';
import { checkPin, type PinAnswer } from './check-pin';
import { hexadecimal } from './hexadecimal';

/** Of little use for so short a secret, and of no cost: it is a latch, not a safe. */
export const PIN_ITERATIONS = 600_000;
const SALT_BYTES = 16;

/**
 * Sets the supervisor's PIN, or another one for it; null takes it away. Where one is set, it is asked for.
 *
 * @param current the PIN that is set; any text while none is
 * @throws {RangeError} setPin requires four to twelve digits
 */
export async function setPin(
  bench: Bench,
  secrets: Secrets,
  pin: string | null,
  current: string,
): Promise<PinAnswer> {
  if (pin !== null && !/^\d{4,12}$/.test(pin)) {
    throw new RangeError('setPin requires four to twelve digits');
  }
  const answer = await checkPin(bench, secrets, current);
  if (!answer.ok) return answer;
  if (pin === null) {
    bench.record(SHOP_STREAM, [{ kind: 'pin-removed' }]);
    return answer;
  }
  const salt = secrets.randomBytes(SALT_BYTES);
  const hash = await secrets.stretch(pin, salt, PIN_ITERATIONS);
  bench.record(SHOP_STREAM, [
    { kind: 'pin-set', salt: hexadecimal(salt), iterations: PIN_ITERATIONS, hash: hexadecimal(hash) },
  ]);
  return answer;
}
