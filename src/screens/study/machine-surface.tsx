import type { Stamp } from '../../domain/records/stamp';
import type { ElementDefinition } from '../../domain/shop/element-definition';
import { study } from '../../i18n/en/study';
import { TimingButton } from '../timing-button';

const words = study.observe;

interface Props {
  /** What the machine works at; null while it stands. */
  readonly running: ElementDefinition | null;
  /** The operator's element that starts it next. */
  readonly starter: string;
  /** How long it ran, where that was too short for a run. */
  readonly shortRun: string | null;
  readonly disabled: boolean;
  readonly onTap: (at: Stamp) => void;
}

/** The machine's place to tap, beside the operator's: it ends the run, and nothing else. */
export function MachineSurface({ running, starter, shortRun, disabled, onTap }: Props) {
  const stands = shortRun === null ? words.startsWith(starter) : words.shortRun(shortRun);
  return (
    <TimingButton class="study-surface study-surface-machine" disabled={!running || disabled} onTap={onTap}>
      <span class="study-surface-edge">{running ? words.machineRuns : words.machineStands}</span>
      <strong class="study-surface-name">{running?.name ?? words.machine}</strong>
      <span class="study-surface-point">
        {running ? running.breakPoint && words.breakPoint(running.breakPoint) : stands}
      </span>
    </TimingButton>
  );
}
