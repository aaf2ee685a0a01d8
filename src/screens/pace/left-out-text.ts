import { leftOut } from '../../domain/turn/left-out';
import type { Cycle } from '../../domain/turn/turn';
import { ownRecord as words } from '../../i18n/en/own-record';

/** How many of some parts are in no average, and why; empty where all are. */
export function leftOutText(cycles: readonly Cycle[]): string {
  const { leftOutFor } = words;
  const counts = new Map<keyof typeof leftOutFor, number>();
  for (const why of cycles.map(leftOut)) {
    // Of a turn that was entered later no part has a time of its own, and the turn says so.
    if (why === null || why === 'entered-later') continue;
    const line = why in leftOutFor ? (why as keyof typeof leftOutFor) : 'asked';
    counts.set(line, (counts.get(line) ?? 0) + 1);
  }
  if (counts.size === 0) return '';
  return words.leftOut([...counts].map(([line, count]) => `${count} ${leftOutFor[line]}`).join(', '));
}
