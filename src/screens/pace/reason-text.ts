import { reasonWords } from '../../i18n/en/reasons';

/** A reason in words: the shop's own, or the tablet's for the reasons every shop starts with. */
export function reasonText({ reason, label }: { reason: string; label: string }): string {
  return label || (reasonWords[reason] ?? reason);
}
