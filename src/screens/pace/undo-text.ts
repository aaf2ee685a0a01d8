import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';

/** What Undo would take back, in words; empty when there is nothing. */
export function undoText({ undoable, cycles, stoppages }: Turn): string {
  const { undoWhat } = words;
  if (undoable?.outcome) return words.outcomes[undoable.outcome];
  switch (undoable?.kind) {
    case undefined:
      return '';
    case 'part-done':
      return undoWhat['part-done'](cycles.at(-1)?.netMs ?? 0);
    case 'stopped':
    case 'resumed':
      return (stoppages.at(-1)?.category === 'rework' ? undoWhat.rework : undoWhat)[undoable.kind];
    case 'part-begun':
    case 'element-done':
    case 'part-changed':
    case 'person-changed':
      return undoWhat[undoable.kind];
    default:
      return undoWhat.answer;
  }
}
