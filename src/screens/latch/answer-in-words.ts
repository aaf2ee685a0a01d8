import type { PinAnswer } from '../../application/latch/check-pin';
import { latchWords as words } from '../../i18n/en/latch';

/** What to tell about a PIN that was not taken; empty for one that was. */
export function answerInWords(answer: PinAnswer): string {
  if (answer.ok) return '';
  const wait = answer.waitMs > 0 ? words.wait(answer.waitMs) : '';
  return answer.reason === 'wait' ? wait : `${words.wrong} ${wait}`.trim();
}
