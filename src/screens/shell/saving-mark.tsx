import type { ReadonlySignal } from '@preact/signals';
import type { Saving } from '../../application/saving-queue';
import { shell as words } from '../../i18n/en/shell';
import { useLazy } from '../use-lazy';

/** Says where the taps are: saved, on their way, or not saved. It reads the state and adds nothing. */
export function SavingMark({
  saving,
  isMemoryOnly,
}: {
  saving: ReadonlySignal<Saving>;
  isMemoryOnly: boolean;
}) {
  const { state, unsaved, problem, isInReserve } = saving.value;
  const Problem = useLazy(state === 'not-saved', loadProblem);
  if (isMemoryOnly) {
    return (
      <p class="saving" data-state="not-saved" role="alert">
        {words.memoryOnly}
      </p>
    );
  }
  return (
    <p class="saving" data-state={state} role={state === 'not-saved' ? 'alert' : undefined}>
      {state === 'saved' && words.saved}
      {state === 'recorded' && words.recorded}
      {state === 'not-saved' && (
        <>
          {words.notSaved(unsaved, isInReserve)} {Problem && <Problem problem={problem} />}
        </>
      )}
    </p>
  );
}

const loadProblem = async () => (await import('./notices')).SavingProblem;
