import type { LostTime } from '../../domain/day/lost-time';
import { reasonWords } from '../../i18n/en/reasons';

/** In the shop's own words where it has given any. */
export function reasonName({ reason, label }: Pick<LostTime, 'reason' | 'label'>): string {
  return label || (reasonWords[reason] ?? reason);
}
