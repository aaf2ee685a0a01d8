import { useState } from 'preact/hooks';
import { endStudy } from '../../application/study/end-study';
import { undoLastReading } from '../../application/study/undo-last-reading';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';

const words = allWords.observe;

/** Undo, and the end in two taps. The second tap of a double one falls on "Go on". */
export function EndOfStudy({ study }: { study: Study }) {
  const { bench, go, isReadOnly } = useApp();
  const [isAsked, setIsAsked] = useState(false);
  if (!isAsked) {
    return (
      <>
        <TimingButton
          key="undo"
          class="button study-action"
          disabled={study.undoable === null || isReadOnly}
          onTap={() => undoLastReading(bench)}
        >
          {words.undo}
          {study.undoable && (
            <span class="study-action-what">
              {words.undoWhat[study.undoable.kind](study.undoable.element)}
            </span>
          )}
        </TimingButton>
        <button key="end" type="button" class="button" disabled={isReadOnly} onClick={() => setIsAsked(true)}>
          {words.end}
        </button>
      </>
    );
  }
  return (
    <>
      <TimingButton
        key="now"
        class="button strong"
        onTap={(at) => {
          endStudy(bench, at);
          go('study', study.id);
        }}
      >
        {words.endNow}
      </TimingButton>
      <button key="on" type="button" class="button" onClick={() => setIsAsked(false)}>
        {words.goOn}
      </button>
      <p class="study-ends-question small" role="status">
        {words.endQuestion}
      </p>
    </>
  );
}
