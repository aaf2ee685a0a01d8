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
  // Bound to the page itself: what else a tap changes is drawn after it.
  const state = useComputed(() => (isMemoryOnly ? 'not-saved' : saving.value.state));
  const said = useComputed(() => (state.value === 'saved' ? words.saved : words.recorded));
  const isNotSaved = useComputed(() => state.value === 'not-saved').value;
  return (
    <p class="saving" data-state={state} role={isNotSaved ? 'alert' : undefined}>
      {isMemoryOnly ? words.memoryOnly : isNotSaved ? <NotSaved {...saving.value} /> : said}
    </p>
  );
}

function NotSaved({ unsaved, problem, isInReserve }: Saving) {
  const Problem = useLazy(true, loadProblem);
  return (
    <>
      {words.notSaved(unsaved, isInReserve)} {Problem && <Problem problem={problem} />}
    </>
  );
}

const loadProblem = async () => (await import('./notices')).SavingProblem;
