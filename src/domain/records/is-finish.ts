import type { LogRecord } from './log-record';

/** Whether a turn or a study is finished with this record: it ends one, or is one that was entered later or came from a table. */
export function isFinish({ fact }: LogRecord): boolean {
  if (fact.kind === 'turn-started') return fact.enteredLater !== undefined;
  return fact.kind === 'turn-ended' || fact.kind === 'study-ended' || fact.kind === 'study-imported';
}
