import { useEffect, useState } from 'preact/hooks';
import { takeCorrectionBack } from '../../application/turn/take-correction-back';
import { type Correction, correctionHistory } from '../../domain/turn/correction-history';
import type { Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { settle } from '../../i18n/en/settle';
import { useApp } from '../app';
import { timeOfDay } from '../pace/time-of-day';
import type { Wanted } from './put-right';
import { afterText } from './state-text';

interface Props {
  readonly turn: Turn;
  ask(wanted: Wanted): void;
}

/** What was answered and put right in a turn and still holds, newest first: each of it can be taken back. */
export function BackRight({ turn, ask }: Props) {
  const { bench } = useApp();
  const [standing, setStanding] = useState<readonly Correction[]>([]);
  // Once something is taken back, the list is gone: what it shows was read when it was opened.
  useEffect(() => {
    bench.log.readStream(turn.id).then((records) => {
      if (records.length > 0) setStanding(correctionHistory(records).filter(canGoBack).reverse());
    });
  }, []);
  if (standing.length === 0) return <p>{words.noneBack}</p>;
  return (
    <div class="choices">
      {standing.map(({ key, kind, at, before, after }) => {
        const what = `${timeOfDay(at)} · ${settle.kinds[kind]} · ${afterText(before, after)}`;
        return (
          <button
            type="button"
            class="button"
            key={key}
            onClick={() =>
              ask({
                word: `${words.whats.back}: ${what}`,
                isAnswer: true,
                told: `${settle.kinds.undone}: ${what}.`,
                say: ({ by }) => takeCorrectionBack(bench, turn.id, key, by),
              })
            }
          >
            {what}
          </button>
        );
      })}
    </div>
  );
}

function canGoBack({ kind, isStanding }: Correction): boolean {
  return isStanding && kind !== 'turn-started';
}
