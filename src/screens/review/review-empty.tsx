import { useState } from 'preact/hooks';
import { localDay } from '../../domain/day/local-day';
import { beforeAfterWords } from '../../i18n/en/before-after';
import { enterTurn } from '../../i18n/en/enter-turn';
import { review as words } from '../../i18n/en/review';
import { useApp } from '../app';
import { EnterTurnForm } from '../settle/enter-turn-form';
import type { Who } from '../settle/question';

/** Before the first turn: what will stand here, and the ways to it. */
export function ReviewEmpty() {
  const app = useApp();
  const [isEntering, setEntering] = useState(false);
  const [who, setWho] = useState<Who>({ by: '', why: '', isAtStation: false });
  const hasParts = app.bench.shop.value.parts.some(({ retired }) => !retired);
  return (
    <div class="page stack">
      <h1>{words.emptyTitle}</h1>
      <p>{words.emptyText}</p>
      <div class="row">
        <button type="button" class="button strong" onClick={() => app.go('pace')}>
          {words.openPace}
        </button>
        {!app.isReadOnly && (
          <button type="button" class="button" onClick={() => app.go('review', 'before-after')}>
            {beforeAfterWords.old.write}
          </button>
        )}
        {!app.isReadOnly && !isEntering && (
          <button type="button" class="button" onClick={() => setEntering(true)}>
            {enterTurn.open}
          </button>
        )}
        {!app.isDemo && (
          <button type="button" class="button" onClick={app.openDemo}>
            {words.openDemo}
          </button>
        )}
      </div>
      {isEntering && hasParts && (
        <EnterTurnForm
          day={localDay(app.bench.clock.now())}
          who={who}
          setWho={setWho}
          close={() => setEntering(false)}
        />
      )}
      {isEntering && !hasParts && (
        <div class="row">
          <p>{words.enterNeedsPart}</p>
          <button type="button" class="button" onClick={() => app.go('shop')}>
            {words.openShop}
          </button>
        </div>
      )}
    </div>
  );
}
