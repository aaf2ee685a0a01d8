import './base.css';
import { shell as words } from '../../i18n/en/shell';

/** Shown instead of an empty shop when the records cannot be read. Work may go on without saving, said plainly. */
export function OpeningTrouble({ error, goOn }: { error: unknown; goOn: () => void }) {
  return (
    <div class="page stack" role="alert">
      <h1>{words.cannotOpen}</h1>
      <p class="quiet">{error instanceof Error ? `${error.name}: ${error.message}` : String(error)}</p>
      <button type="button" class="button strong" onClick={() => location.reload()}>
        {words.tryAgain}
      </button>
      <p>
        <a class="shell-rescue" href="rescue.html">
          {words.rescue}
        </a>
      </p>
      <p>{words.withoutText}</p>
      <button type="button" class="button" onClick={goOn}>
        {words.without}
      </button>
    </div>
  );
}
