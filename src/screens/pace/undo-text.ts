import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';

/** What Undo would take back, in words; empty when there is nothing. */
export function undoText({ undoable, cycles }: Turn): string {
  switch (undoable?.kind) {
    case 'part-done':
      return words.undoWhat['part-done'](cycles.at(-1)?.netMs ?? 0);
    case 'part-begun':
    case 'element-done':
    case 'part-changed':
    case 'person-changed':
    case 'stopped':
    case 'resumed':
      return words.undoWhat[undoable.kind];
    default:
      return '';
  }
}
