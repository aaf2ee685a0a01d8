import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { studyWorking as words } from '../../i18n/en/study-working';
import type { Working } from './working';

interface Props {
  readonly working: Working;
  readonly onClose: () => void;
  /** What can be chosen about it. */
  readonly children?: ComponentChildren;
}

/** The working of one figure, opened in its place on the sheet. */
export function WorkingNote({ working, onClose, children }: Props) {
  const { what, words: said, symbols, numbers, leftOut, source } = working;
  const note = useRef<HTMLElement>(null);
  useEffect(() => note.current?.scrollIntoView({ block: 'nearest' }), [what]);
  return (
    <section class="study-working" aria-label={what} ref={note}>
      <div class="row spread">
        <strong>{what}</strong>
        <button type="button" class="button study-close" onClick={onClose}>
          {words.close}
        </button>
      </div>
      <dl>
        <dt>{words.words}</dt>
        <dd>{said}</dd>
        <dt>{words.symbols}</dt>
        <dd class="study-formula">{symbols}</dd>
        <dt>{words.numbers}</dt>
        <dd>
          {numbers.map((line) => (
            <p key={line} class="number">
              {line}
            </p>
          ))}
        </dd>
        {leftOut && (
          <>
            <dt>{words.leftOut}</dt>
            <dd>
              {leftOut.length === 0 ? words.nothingLeftOut : leftOut.map((line) => <p key={line}>{line}</p>)}
            </dd>
          </>
        )}
        <dt>{words.source}</dt>
        <dd>{source}</dd>
      </dl>
      {children}
    </section>
  );
}
