import { beginRework } from '../../application/turn/begin-rework';
import { turnQuestion as words } from '../../i18n/en/turn-question';
import { useApp } from '../app';

interface Props {
  readonly partDone: string;
  readonly word: string;
  begun(said: string): void;
}

/** The part is made good right now: work stands still, and the time is that part's. */
export function ReworkNow({ partDone, word, begun }: Props) {
  const { bench, isReadOnly } = useApp();
  return (
    <button
      type="button"
      class="button pace-outcome"
      disabled={isReadOnly}
      onClick={(event) => {
        beginRework(bench, partDone, bench.clock.stampOf(event));
        begun(words.reworkBegun);
      }}
    >
      {word}
    </button>
  );
}
