import type { StopReason } from '../../domain/records/shop-fact';
import { NOT_STATED } from '../../domain/turn/turn';
import { useApp } from '../app';
import { reasonText } from './reason-text';

interface Props {
  readonly title: string;
  /** Id of the reason that stands. */
  readonly reason: string;
  choose(reason: StopReason): void;
}

/** The shop's reasons, and none of them: not stated is neutral. */
export function ReasonGrid({ title, reason: standing, choose }: Props) {
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
            aria-pressed={reason.id === standing}
            disabled={isReadOnly}
            onClick={() => choose(reason)}
          >
            {reasonText({ reason: reason.id, label: reason.label })}
          </button>
        ))}
      </div>
    </section>
  );
}
