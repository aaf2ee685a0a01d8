import { type ReadonlySignal, useComputed } from '@preact/signals';
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
  const isNotSaved = useComputed(() => saving.value.state === 'not-saved').value;
  const state = useComputed(() => saving.value.state);
  const said = useComputed(() => (state.value === 'saved' ? words.saved : words.recorded));
  const Problem = useLazy(isNotSaved, loadProblem);
  if (isMemoryOnly) {
    return (
      <p class="saving" data-state="not-saved" role="alert">
        {words.memoryOnly}
      </p>
    );
  }
  if (!isNotSaved) {
    return (
      <p class="saving" data-state={state}>
        {said}
      </p>
    );
  }
  const { unsaved, problem, isInReserve } = saving.value;
  return (
    <p class="saving" data-state="not-saved" role="alert">
      {words.notSaved(unsaved, isInReserve)} {Problem && <Problem problem={problem} />}
    </p>
  );
}

const loadProblem = async () => (await import('./notices')).SavingProblem;
