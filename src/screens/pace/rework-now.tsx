import { beginRework } from '../../application/turn/begin-rework';
import { pace as words } from '../../i18n/en/pace';
import { useApp } from '../app';

/** The part is made good right now: work stands still, and the time is that part's. */
export function ReworkNow({ partDone, begun }: { partDone: string; begun(): void }) {
  const { bench, isReadOnly } = useApp();
  return (
    <button
      type="button"
      class="button pace-outcome"
      disabled={isReadOnly}
      onClick={(event) => {
        beginRework(bench, partDone, bench.clock.stampOf(event));
        begun();
      }}
    >
      {words.reworkNow}
    </button>
  );
}
