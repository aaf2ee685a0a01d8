import { useState } from 'preact/hooks';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { keptDraft } from './kept-draft';

const words = study.prepare;

/** Drops a preparation, once it was said what goes with it and what stays. */
export function PutAway() {
  const app = useApp();
  const [isAsked, setIsAsked] = useState(false);
  if (!isAsked) {
    return (
      <button type="button" class="button plain" onClick={() => setIsAsked(true)}>
        {words.putAway}
      </button>
    );
  }
  return (
    <div class="row" role="alert">
      <p>{words.putAwayWhat}</p>
      <button
        type="button"
        class="button strong"
        onClick={() => {
          keptDraft.drop(app);
          app.go('study');
        }}
      >
        {words.putAway}
      </button>
      <button type="button" class="button" onClick={() => setIsAsked(false)}>
        {study.observe.goOn}
      </button>
    </div>
  );
}
