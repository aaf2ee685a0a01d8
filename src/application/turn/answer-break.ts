import type { BreakAnswer } from '../../domain/records/station-fact';
import type { Bench } from '../bench';

/** Says whether the planned break that lies in a part was taken. A second answer replaces the first. */
export function answerBreak(
  bench: Bench,
  stream: string,
  asked: { readonly key: string; readonly fromMs: number; readonly toMs: number },
  as: BreakAnswer['as'],
  by?: string,
): void {
  const { key: partDone, fromMs, toMs } = asked;
  bench.record(stream, [{ kind: 'break-answered', partDone, fromMs, toMs, as, ...(by ? { by } : {}) }]);
}
