import { useState } from 'preact/hooks';
import { reclassifyTime } from '../../application/turn/reclassify-time';
import { NOT_STATED, type Turn } from '../../domain/turn/turn';
import { ledger } from '../../i18n/en/ledger';
import { putRight as words } from '../../i18n/en/put-right';
import { useApp } from '../app';
import { reasonText } from '../pace/reason-text';
import type { Wanted } from './put-right';
import { clockAt, readStretch, StretchFields } from './stretch-fields';
import { withBreak } from './with-break';

interface Props {
  readonly turn: Turn;
  ask(wanted: Wanted): void;
}

/** Work stood still, and more than that nobody says. */
const unstated = { id: NOT_STATED, label: '', category: 'stoppage' } as const;

/** What a stretch of the turn was. */
export function StretchRight({ turn, ask }: Props) {
  const { bench } = useApp();
  const [from, setFrom] = useState(clockAt(turn, 0));
  const [to, setTo] = useState(clockAt(turn, turn.lastAtMs));
  const [isMissing, setMissing] = useState(false);
  const put = (
    what: string,
    as: Pick<Parameters<typeof reclassifyTime>[2], 'category' | 'reason' | 'label'>,
  ) => {
    const stretch = readStretch(turn, from, to);
    setMissing(!stretch);
    if (!stretch) return;
    ask({
      word: words.putAs(from.slice(0, 5), to.slice(0, 5), what),
      say: (who) => reclassifyTime(bench, turn.id, { ...stretch, ...as, ...who }),
    });
  };
  return (
    <div class="stack">
      <StretchFields from={from} to={to} setFrom={setFrom} setTo={setTo} isMissing={isMissing} />
      <p>{words.was}</p>
      <div class="choices">
        <button
          type="button"
          class="button"
          onClick={() => put(words.work, { category: 'cycle', reason: '', label: '' })}
        >
          {words.work}
        </button>
        {[...withBreak(bench.shop.value.reasons), unstated].map(({ id, label, category }) => {
          const word = id === NOT_STATED ? ledger.names.stoppage : reasonText({ reason: id, label });
          return (
            <button
              type="button"
              key={id}
              class="button"
              onClick={() => put(word, { category, reason: id, label })}
            >
              {word}
            </button>
          );
        })}
      </div>
    </div>
  );
}
