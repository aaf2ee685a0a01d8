import { settle as words } from '../../i18n/en/settle';
import { DoubtList } from '../settle/doubt-list';
import type { Who } from '../settle/question';
import type { OpenTurn } from './use-open-turns';

export const SETTLE_TITLE_ID = 'review-settle-title';

interface Props {
  readonly open: readonly OpenTurn[];
  readonly who: Who;
  setWho(who: Who): void;
}

/** What taps left open in the turns of a day. */
export function DayToSettle({ open, who, setWho }: Props) {
  if (open.length === 0) return null;
  return (
    <section class="stack no-print" aria-labelledby={SETTLE_TITLE_ID}>
      <h2 id={SETTLE_TITLE_ID} tabIndex={-1}>
        {words.title}
      </h2>
      <p class="quiet">{words.note}</p>
      <DoubtList turns={open} who={who} setWho={setWho} />
    </section>
  );
}
