import './base.css';
import { shell as words } from '../../i18n/en/shell';

/** Shown instead of an empty shop when the records cannot be read. */
export function OpeningTrouble({ error }: { error: unknown }) {
  return (
    <div class="page stack" role="alert">
      <h1>{words.cannotOpen}</h1>
      <p class="quiet">{error instanceof Error ? `${error.name}: ${error.message}` : String(error)}</p>
      <button type="button" class="button strong" onClick={() => location.reload()}>
        {words.tryAgain}
      </button>
    </div>
  );
}
