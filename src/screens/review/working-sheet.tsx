import { useEffect, useRef } from 'preact/hooks';
import { review as words } from '../../i18n/en/review';
import { reviewWorking as says } from '../../i18n/en/review-working';
import type { Working } from './working';

/** The working of a figure, laid over the page until it is closed. */
export function WorkingSheet({ working, close }: { working: Working; close: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const { title, formula, put, numbers } = working;
  return (
    <dialog ref={dialog} class="review-working" aria-labelledby="review-working-title" onClose={close}>
      <div class="stack">
        <h2 id="review-working-title">{title}</h2>
        <p>{working.says}</p>
        {formula && <p class="review-formula">{formula}</p>}
        {put && <p class="review-formula number">{put}</p>}
        {numbers && (
          <div class="stack">
            <h3>{says.numbers}</h3>
            <p class="small quiet">{numbers.title}</p>
            <p class="number review-numbers">{numbers.values.join('  ')}</p>
          </div>
        )}
        <button type="button" class="button strong" onClick={() => dialog.current?.close()}>
          {words.close}
        </button>
      </div>
    </dialog>
  );
}
