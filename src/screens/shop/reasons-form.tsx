import { useState } from 'preact/hooks';
import { MOST_REASONS, setReasons } from '../../application/shop/set-reasons';
import type { StopReason } from '../../domain/records/shop-fact';
import { isSameCode } from '../../domain/shop/known-code';
import { reasonWords } from '../../i18n/en/reasons';
import { shop } from '../../i18n/en/shop';
import { useApp } from '../app';
import { newReasonId } from './new-reason-id';
import { ReasonLine } from './reason-line';
import { useKeptDraft } from './use-kept-draft';

const words = shop.reasons;

/** The reasons a stoppage can have. What is typed is a draft until it is saved as a whole. */
export function ReasonsForm() {
  const { bench, isReadOnly } = useApp();
  const saved = bench.shop.value.reasons;
  const [draft, setDraft] = useKeptDraft<readonly StopReason[]>(bench, 'reasons');
  /** Rises when the fields must be filled anew. */
  const [filling, setFilling] = useState(0);
  const [told, setTold] = useState('');
  const [fault, setFault] = useState('');
  const reasons = draft ?? saved;

  const change = (next: readonly StopReason[]) => {
    setDraft(next);
    setFault('');
    setTold('');
  };
  const save = (event: Event) => {
    event.preventDefault();
    const named = reasons.map(({ id, label }) => label.trim() || (reasonWords[id] ?? ''));
    if (named.includes('')) return setFault(words.missing);
    const twice = named.find((name, place) => named.findIndex((each) => isSameCode(each, name)) < place);
    if (twice !== undefined) return setFault(words.twice(twice));
    setReasons(bench, reasons);
    setDraft(null);
    setFilling(filling + 1);
    setTold(words.saved);
  };
  const add = () => {
    const id = newReasonId(reasons, bench.clock.now().wallMs);
    change([...reasons, { id, label: '', category: 'stoppage' }]);
  };
  return (
    <section class="stack" aria-labelledby="shop-reasons-title">
      <h2 id="shop-reasons-title">{words.title}</h2>
      <p class="small quiet">{words.note}</p>
      <form class="stack" onSubmit={save} noValidate>
        <ol class="shop-list shop-reasons">
          {reasons.map((reason, place) => (
            <ReasonLine
              key={`${filling} ${reason.id}`}
              reason={reason}
              place={place + 1}
              change={(next) => change(reasons.map((each) => (each.id === reason.id ? next : each)))}
              remove={reasons.length > 1 ? () => change(reasons.filter(({ id }) => id !== reason.id)) : null}
            />
          ))}
        </ol>
        {fault && (
          <p class="fault" role="alert">
            {fault}
          </p>
        )}
        <div class="row">
          <button
            type="button"
            class="button"
            disabled={isReadOnly || reasons.length >= MOST_REASONS}
            onClick={add}
          >
            {words.add}
          </button>
          <button type="submit" class="button strong" disabled={isReadOnly || draft === null}>
            {words.save}
          </button>
          {draft && (
            <button
              type="button"
              class="button"
              onClick={() => {
                setDraft(null);
                setFilling(filling + 1);
                setFault('');
              }}
            >
              {words.cancel}
            </button>
          )}
        </div>
        {reasons.length >= MOST_REASONS && <p class="small quiet">{words.full}</p>}
        <p role="status">{draft ? words.changed : told}</p>
      </form>
    </section>
  );
}
