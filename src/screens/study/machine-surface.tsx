import { endMachine } from '../../application/study/end-machine';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';

const words = allWords.observe;

/** The machine's place to tap, beside the operator's: it ends the run, and nothing else. */
export function MachineSurface({ study }: { study: Study }) {
  const { bench, isReadOnly } = useApp();
  const { machine } = study.watch;
  const running = machine ? study.heading?.elements[machine.elementIndex] : null;
  return (
    <TimingButton
      class="study-surface study-surface-machine"
      disabled={!running || isReadOnly}
      onTap={(at) => endMachine(bench, at)}
    >
      <span class="study-surface-edge">{running ? words.machineRuns : words.machineStands}</span>
      <strong class="study-surface-name">{running?.name ?? words.machine}</strong>
      <span class="study-surface-point">
        {running?.breakPoint ? words.breakPoint(running.breakPoint) : ''}
      </span>
    </TimingButton>
  );
}
