import { useComputed } from '@preact/signals';
import type { Saving } from '../../application/saving-queue';
import { shell as words } from '../../i18n/en/shell';
import { useApp } from '../app';
import { useLazy } from '../use-lazy';

/** Says where the taps are: saved, on their way, or not saved. It reads the state and adds nothing. */
export function SavingMark() {
  const { bench, copies } = useApp();
  // No style hangs on it: a frame of its own, between a tap and its answer, would make every tap saved later.
  const state = useComputed(() => (copies ? bench.saving.value.state : 'not-saved'));
  // What is saved before anybody sees the tap counted need not be said to be on its way.
  const said = useComputed(() => (bench.isSavingLate.value ? words.recorded : words.saved));
  const isNotSaved = useComputed(() => state.value === 'not-saved').value;
  return (
    <p
      class={isNotSaved ? 'saving is-not' : 'saving'}
      data-saving={state}
      role={isNotSaved ? 'alert' : undefined}
    >
      {copies ? isNotSaved ? <NotSaved {...bench.saving.value} /> : said : words.memoryOnly}
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
