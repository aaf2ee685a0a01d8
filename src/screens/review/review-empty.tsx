import { review as words } from '../../i18n/en/review';
import { useApp } from '../app';

/** Before the first turn: what will stand here, and the way to it. */
export function ReviewEmpty() {
  const app = useApp();
  return (
    <div class="page stack">
      <h1>{words.emptyTitle}</h1>
      <p>{words.emptyText}</p>
      <div class="row">
        <button type="button" class="button strong" onClick={() => app.go('pace')}>
          {words.openPace}
        </button>
        {!app.isDemo && (
          <button type="button" class="button" onClick={app.openDemo}>
            {words.openDemo}
          </button>
        )}
      </div>
    </div>
  );
}
