import { explainStoppage } from '../../application/turn/explain-stoppage';
import { NOT_STATED, type Stoppage } from '../../domain/turn/turn';
import { useApp } from '../app';
import { reasonText } from './reason-text';

interface Props {
  readonly turn: string;
  readonly stoppage: Stoppage;
  readonly title: string;
  chosen(): void;
}

/** The shop's reasons, and none of them: not stated is neutral. */
export function ReasonChoice({ turn, stoppage, title, chosen }: Props) {
  const { bench, isReadOnly } = useApp();
  const notStated = { id: NOT_STATED, label: '', category: 'stoppage' } as const;
  return (
    <section class="pace-reasons" aria-label={title}>
      <h2>{title}</h2>
      <div class="pace-reason-grid">
        {[...bench.shop.value.reasons, notStated].map((reason) => (
          <button
            type="button"
            key={reason.id}
            class={`choice ${reason.id === NOT_STATED ? 'is-neutral' : ''}`}
            aria-pressed={reason.id === stoppage.reason}
            disabled={isReadOnly}
            onClick={() => {
              explainStoppage(bench, turn, stoppage.key, reason);
              chosen();
            }}
          >
            {reasonText({ reason: reason.id, label: reason.label })}
          </button>
        ))}
      </div>
    </section>
  );
}
